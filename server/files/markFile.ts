import type { DocumentFault } from '../../core/musicxml/fault.ts';
import { type MarkedPart, mergeMarks } from '../../core/musicxml/mergeMarks.ts';
import { encode, expressible } from './encoding.ts';
import type { OpenedFile } from './openFile.ts';
import { packMxl } from './writeFile.ts';

export type FileForm = 'musicxml' | 'mxl';

/** Media types of a score (MusicXML 4.0, container). */
export const MEDIA_TYPES: Record<FileForm, string> = { musicxml: 'application/vnd.recordare.musicxml+xml', mxl: 'application/vnd.recordare.musicxml' };

/**
 * Bytes of a score file with marks merged in, in the source's encoding. Without a change the bytes are those of the source where the form is the
 * same too.
 */
export async function markFile(bytes: Uint8Array, file: OpenedFile, parts: readonly MarkedPart[], superseded: 'keep' | 'hide', form: FileForm): Promise<{ ok: true; bytes: Uint8Array } | { ok: false; fault: DocumentFault }> {
  const merged = mergeMarks(file.text, { parts, superseded, expressible: expressible(file.encoding) });
  if (!merged.ok) return merged;
  const sameForm = !file.fromMei && (form === 'mxl') === (file.archive !== null);
  if (sameForm && merged.text === file.text) return { ok: true, bytes };
  const score = encode(merged.text, file.encoding);
  return { ok: true, bytes: form === 'mxl' ? await packMxl(score, file.archive) : score };
}
