import iconv from 'iconv-lite';
import { describe, expect, it } from 'vitest';
import type { Part } from '../../../core/music/part.ts';
import { readScore } from '../../../core/musicxml/readScore.ts';
import { encodingOf } from '../../../server/files/encoding.ts';
import { openFile } from '../../../server/files/openFile.ts';
import { markDocument } from '../../../server/jobs/documents.ts';
import { work } from '../../../server/jobs/work.ts';
import { note, scoreText } from '../../support/scoreText.ts';

const NAME = 'Violoncelle à côté';
const lines = scoreText([note('C3', 8) + note('D3', 8), note('E3', 16)], { name: NAME });
const declared = (encoding: string, text = lines) => text.replace('encoding="UTF-8"', `encoding="${encoding}"`);
const behind = (mark: number[], bytes: Buffer) => Buffer.concat([Buffer.from(mark), bytes]);
const utf16le = (text: string) => Buffer.from(text, 'utf16le');

/** The bytes are made and read back without the code under test: by Buffer, and by iconv-lite where Buffer has no such encoding. */
const WAYS: { way: string; mark: number[]; write: (text: string) => Buffer; text: string }[] = [
  { way: 'UTF-8', mark: [], write: (text) => Buffer.from(text), text: lines },
  { way: 'UTF-8 with a byte order mark', mark: [0xef, 0xbb, 0xbf], write: (text) => Buffer.from(text), text: lines },
  { way: 'UTF-8 with CRLF', mark: [], write: (text) => Buffer.from(text), text: lines.replaceAll('\n', '\r\n') },
  { way: 'UTF-16 LE with a byte order mark', mark: [0xff, 0xfe], write: utf16le, text: declared('UTF-16') },
  { way: 'UTF-16 BE with a byte order mark', mark: [0xfe, 0xff], write: (text) => utf16le(text).swap16(), text: declared('UTF-16') },
  { way: 'UTF-16 LE with CRLF', mark: [0xff, 0xfe], write: utf16le, text: declared('UTF-16', lines.replaceAll('\n', '\r\n')) },
  { way: 'UTF-16 LE without a mark', mark: [], write: utf16le, text: declared('UTF-16') },
  { way: 'ISO-8859-1', mark: [], write: (text) => Buffer.from(text, 'latin1'), text: declared('ISO-8859-1') },
  { way: 'windows-1252', mark: [], write: (text) => iconv.encode(text, 'windows-1252'), text: declared('windows-1252') },
];

async function onlyPart(bytes: Buffer): Promise<Part> {
  const answer = await work.importScore({ bytes, fileName: 'score.musicxml' });
  if (!answer.ok) throw new Error(answer.trouble.text);
  return answer.score.parts[0]!;
}

async function marked(bytes: Buffer, text?: string): Promise<Buffer> {
  const ids = await onlyPart(bytes);
  const value = text === undefined ? [] : [{ note: ids.measures[0]!.notes[1]!.id, value: { kind: 'text' as const, text } }];
  const answer = await work.markDocument({ bytes, fileName: 'score.musicxml', part: 'P1', ids, marks: value, form: 'musicxml', superseded: 'keep' });
  if (!answer.ok) throw new Error(answer.trouble.text);
  return Buffer.from(answer.bytes);
}

describe.each(WAYS)('a score in $way', ({ mark, write, text }) => {
  const source = behind(mark, write(text));

  it('is read with its letters and notes', async () => {
    const part = await onlyPart(source);
    expect(part.name).toBe(NAME);
    expect(part.measures.map(({ notes }) => notes.map(({ midi }) => midi))).toEqual([[48, 50], [52]]);
  });

  it('comes back byte for byte without marks', async () => {
    expect((await marked(source)).equals(source)).toBe(true);
  });

  it('differs by the insertion alone with a mark, in the encoding it came in', async () => {
    const words = 'à la pointe';
    const out = await marked(source, words);
    expect(encodingOf(out)).toEqual(encodingOf(source));
    let same = 0;
    while (out[same] === source[same]) same++;
    const rest = source.length - same;
    expect(out.subarray(out.length - rest).equals(source.subarray(same))).toBe(true);
    expect(out.subarray(same, out.length - rest).includes(write(words))).toBe(true);
  });
});

describe('a mark with letters the encoding lacks', () => {
  it('is written as references to them in ISO-8859-1, and read again as it was', async () => {
    const source = Buffer.from(declared('ISO-8859-1'), 'latin1');
    const out = await marked(source, 'Ⅳ струна');
    expect(out.toString('latin1')).toMatch(/&#(8547|x2163);/i);
    const opened = await openFile(out, 'score.musicxml');
    if (!opened.ok) throw new Error(opened.fault.text);
    const read = readScore(opened.text);
    expect(JSON.stringify(read.ok && read.score)).toContain('Ⅳ струна');
  });
});

describe('the document worker', () => {
  it('gives back the bytes of a UTF-16 score too', async () => {
    const source = behind([0xff, 0xfe], utf16le(declared('UTF-16')));
    const ids = await onlyPart(source);
    const answer = await markDocument({ bytes: source, fileName: 'score.musicxml', part: 'P1', ids, marks: [], form: 'musicxml', superseded: 'keep' });
    expect(answer.ok && Buffer.from(answer.bytes).equals(source)).toBe(true);
  });
});
