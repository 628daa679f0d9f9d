import type { DocumentFault } from '../../core/musicxml/fault.ts';
import { isMei, musicXmlFromMei } from '../../core/mei/musicXmlFromMei.ts';
import { CONTAINER, rootPath } from './container.ts';
import { decode, type Encoding, encodingOf } from './encoding.ts';
import { FileError } from './fileFault.ts';
import { unpack } from './unpack.ts';
import { zipDirectory } from './zipDirectory.ts';

/** A score file, opened: its text and all that is needed to write it back the same way. */
export interface OpenedFile {
  text: string;
  encoding: Encoding;
  /** The archive it came in, null for a plain file. */
  archive: { bytes: Buffer; root: string } | null;
  /** It came as MEI: the text is the same music as MusicXML, in UTF-8. */
  fromMei: boolean;
}

export type Opened = ({ ok: true } & OpenedFile) | { ok: false; fault: DocumentFault };

/**
 * Opens an uploaded score. The first bytes decide whether it is an archive, not its name; an MEI score is given as MusicXML.
 * Returns the fault when it is neither XML nor a .mxl within the caps, or MEI without a score that can be read.
 */
export async function openFile(bytes: Uint8Array, fileName: string): Promise<Opened> {
  try {
    return asMusicXml(await opened(Buffer.from(bytes.buffer, bytes.byteOffset, bytes.byteLength), fileName));
  } catch (error) {
    if (error instanceof FileError) return { ok: false, fault: error.fault };
    throw error;
  }
}

function asMusicXml(file: Omit<OpenedFile, 'fromMei'>): Opened {
  if (!isMei(file.text)) return { ok: true, ...file, fromMei: false };
  const read = musicXmlFromMei(file.text);
  return read.ok ? { ok: true, text: read.text, encoding: { name: 'utf8', mark: false }, archive: null, fromMei: true } : read;
}

async function opened(bytes: Buffer, fileName: string): Promise<Omit<OpenedFile, 'fromMei'>> {
  if (bytes.length === 0) throw new FileError('EMPTY', `"${fileName}" is empty. Save the score again and send that file.`);
  if (bytes[0] === 0x50 && bytes[1] === 0x4b) {
    const entries = await zipDirectory(bytes);
    const container = entries.find(({ name }) => name === CONTAINER);
    const root = rootPath(entries.map(({ name }) => name), container && unpack(bytes, container));
    const entry = entries.find(({ name }) => name === root);
    if (!entry) throw new FileError('NO_SCORE_INSIDE', 'The archive holds no score. Save it again as .mxl or .musicxml and send that file.');
    const score = unpack(bytes, entry);
    const encoding = encodingOf(score);
    return { text: decode(score, encoding), encoding, archive: { bytes, root } };
  }
  const known = foreignKind(bytes);
  if (known) throw new FileError('NOT_MUSICXML', `"${fileName}" is ${known}. Export the score as MusicXML (.musicxml or .mxl) and send that file.`);
  const encoding = encodingOf(bytes);
  return { text: decode(bytes, encoding), encoding, archive: null };
}

const FOREIGN: [string, string][] = [
  ['%PDF', 'a PDF'],
  ['MThd', 'a MIDI file'],
  ['\x1f\x8b', 'a gzip archive'],
  ['\x89PNG', 'a picture'],
  ['\xff\xd8\xff', 'a picture'],
  ['Rar!', 'a RAR archive'],
  ['7z\xbc\xaf', 'a 7z archive'],
];

function foreignKind(bytes: Buffer): string | undefined {
  const head = bytes.subarray(0, 8).toString('latin1');
  return FOREIGN.find(([magic]) => head.startsWith(magic))?.[1];
}
