import iconv from 'iconv-lite';
import { FileError } from './fileFault.ts';

/** How the characters of a document stand in its bytes. */
export interface Encoding {
  /** As iconv-lite calls it. */
  name: 'utf8' | 'utf-16le' | 'utf-16be' | 'latin1' | 'windows-1252' | 'iso-8859-15' | 'ascii';
  /** A byte order mark stands before the text. */
  mark: boolean;
}

const DECLARED: Record<string, Encoding['name']> = {
  'utf-8': 'utf8', utf8: 'utf8', 'us-ascii': 'ascii', ascii: 'ascii',
  'iso-8859-1': 'latin1', latin1: 'latin1', 'iso-8859-15': 'iso-8859-15', 'windows-1252': 'windows-1252', cp1252: 'windows-1252',
};

/** Finds the encoding by the byte order mark, else by the first characters, else by the XML declaration, else UTF-8 (XML 1.0, appendix F). */
export function encodingOf(bytes: Uint8Array): Encoding {
  const [a, b, c] = bytes;
  if (a === 0xef && b === 0xbb && c === 0xbf) return { name: 'utf8', mark: true };
  if (a === 0xff && b === 0xfe) return { name: 'utf-16le', mark: true };
  if (a === 0xfe && b === 0xff) return { name: 'utf-16be', mark: true };
  if (a === 0x3c && b === 0) return { name: 'utf-16le', mark: false };
  if (a === 0 && b === 0x3c) return { name: 'utf-16be', mark: false };
  const head = Buffer.from(bytes.subarray(0, 200)).toString('latin1');
  const declared = /^\s*<\?xml[^>]*?\sencoding\s*=\s*["']([A-Za-z0-9._-]+)["']/.exec(head)?.[1]?.toLowerCase();
  // A declared UTF-16 that starts with single bytes is a wrong declaration: the bytes are right.
  if (declared === undefined || declared.startsWith('utf-16')) return { name: 'utf8', mark: false };
  const name = DECLARED[declared];
  if (!name) throw new FileError('UNKNOWN_ENCODING', `The file says it is written in "${declared}", which Bowline does not read. Save it again as UTF-8.`, 1);
  return { name, mark: false };
}

/** Text of a document without its byte order mark. Throws a FileError at the line where bytes are no characters. */
export function decode(bytes: Uint8Array, encoding: Encoding): string {
  const body = encoding.mark ? bytes.subarray(encoding.name === 'utf8' ? 3 : 2) : bytes;
  if (encoding.name !== 'utf8') {
    if (encoding.name.startsWith('utf-16') && body.length % 2) throw new FileError('BAD_CHARACTERS', 'The file is UTF-16 and ends in the middle of a character; it was probably cut off. Send it again.');
    return iconv.decode(Buffer.from(body.buffer, body.byteOffset, body.byteLength), encoding.name, { stripBOM: false });
  }
  try {
    return strict(body);
  } catch {
    const line = firstBadLine(body);
    throw new FileError('BAD_CHARACTERS', `Line ${line} holds bytes that are no UTF-8 characters. Open the file in a text editor, save it as UTF-8, and send it again.`, line);
  }
}

function strict(bytes: Uint8Array): string {
  return new TextDecoder('utf-8', { fatal: true, ignoreBOM: true }).decode(bytes);
}

function firstBadLine(bytes: Uint8Array): number {
  let line = 1;
  for (let start = 0; start < bytes.length; line++) {
    const found = bytes.indexOf(10, start);
    const end = found < 0 ? bytes.length : found + 1;
    try {
      strict(bytes.subarray(start, end));
    } catch {
      return line;
    }
    start = end;
  }
  return line;
}

const MARKS: Partial<Record<Encoding['name'], number[]>> = { utf8: [0xef, 0xbb, 0xbf], 'utf-16le': [0xff, 0xfe], 'utf-16be': [0xfe, 0xff] };

/** Bytes of a text in the encoding of its source. Text must hold only characters of that encoding (see `expressible`). */
export function encode(text: string, encoding: Encoding): Uint8Array {
  const body = iconv.encode(text, encoding.name, { addBOM: false });
  return encoding.mark ? Buffer.concat([Buffer.from(MARKS[encoding.name] ?? []), body]) : body;
}

/** True when a character stands in that encoding as itself and not as a question mark. */
export function expressible(encoding: Encoding): (character: string) => boolean {
  if (encoding.name === 'utf8' || encoding.name.startsWith('utf-16')) return () => true;
  if (encoding.name === 'ascii') return (character) => (character.codePointAt(0) ?? 0) < 128;
  return (character) => iconv.decode(iconv.encode(character, encoding.name), encoding.name) === character;
}
