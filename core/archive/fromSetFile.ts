import { canonical } from '../agreement/canonical.ts';
import type { Part } from '../music/part.ts';
import { withIds } from '../music/withIds.ts';
import type { KeptPart, KeptSet } from './keptSet.ts';
import { asLog, type SetFile } from './setFile.ts';
import { toSetFile } from './toSetFile.ts';

/**
 * A part whose notes and rests bear the given ids, measure by measure in the order of the document; null where their numbers differ or an id comes twice.
 * Example: `withKeptIds(part, part.measures.map(({ notes }) => notes.map(({ id }) => id)))` equals `part`.
 */
export function withKeptIds(part: Part, ids: readonly (readonly string[])[]): Part | null {
  if (ids.length !== part.measures.length || new Set(ids.flat()).size !== ids.flat().length) return null;
  if (part.measures.some(({ notes }, at) => notes.length !== ids[at]!.length)) return null;
  const given = ids.flat().values();
  return withIds(part, () => given.next().value!);
}

/**
 * The kept set of a `set.json` and the parts read from the document beside it, or the name of the part that does not fit: it is not in the document, its notes
 * are others, its log has a gap, or the marks it lists are not those its log builds.
 * Invariant: `toSetFile` of the result equals `file`. Never throws.
 * Example: `fromSetFile(file, score.parts, bytes)` of an archive that was not touched is `{ ok: true, set }`.
 */
export function fromSetFile(file: SetFile, read: readonly Part[], bytes: Uint8Array): { ok: true; set: KeptSet } | { ok: false; part: string } {
  const parts: KeptPart[] = [];
  for (const { id, name, section, seats, notes, log } of file.parts) {
    const source = read.find((part) => part.id === id);
    const content = source ? withKeptIds({ ...source, name }, notes) : null;
    if (!content) return { ok: false, part: name };
    parts.push({ content, section, seats, log: asLog(log) });
  }
  const { format: _format, version: _version, source, ...heading } = file;
  const set: KeptSet = { ...heading, bytes, fileName: source.name, parts };
  try {
    const again = toSetFile(set, source.file === 'source.mxl');
    const spoilt = file.parts.findIndex((part, index) => canonical(part) !== canonical(again.parts[index]));
    return spoilt < 0 ? { ok: true, set } : { ok: false, part: file.parts[spoilt]!.name };
  } catch {
    return { ok: false, part: file.parts[0]!.name };
  }
}
