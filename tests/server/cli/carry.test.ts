import { mkdtempSync, readFileSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterEach, beforeEach, describe, expect, it, vi } from 'vitest';
import { carry } from '../../../server/cli/carry.ts';
import { note, scoreText } from '../../support/scoreText.ts';

const SCALE = [['C5', 'D5', 'E5', 'F#5'], ['G5', 'F#5', 'A5', 'B5'], ['E5', 'B5', 'C5', 'G5'], ['A5', 'D5', 'F#5', 'C5']];
const text = (measures: string[][]) => scoreText(measures.map((pitches) => pitches.map((pitch) => note(pitch, 4)).join('')));

const folder = mkdtempSync(join(tmpdir(), 'bowline-carry-'));
const path = (name: string) => join(folder, name);
const write = (name: string, content: string) => (writeFileSync(path(name), content), path(name));

let printed = '';
beforeEach(() => {
  printed = '';
  vi.spyOn(process.stdout, 'write').mockImplementation((chunk: string | Uint8Array, ...rest: unknown[]) => {
    printed += String(chunk);
    for (const done of rest) if (typeof done === 'function') (done as () => void)();
    return true;
  });
});
afterEach(() => vi.restoreAllMocks());

const OLD = write('old.musicxml', text(SCALE));
const MARKS = write('marks.json', JSON.stringify({ marks: [
  { part: 'P1', measure: 1, note: 1, finger: 2, bow: 'down' },
  { part: 'P1', measure: 2, note: 1, finger: 3 },
  { part: 'P1', measure: 2, note: 2, string: 2 },
  { part: 'P1', measure: 4, note: 1, change: { after: '1/2' }, seats: ['1o'] },
] }));
const run = (newer: string, out: string) => carry.run([OLD, newer, '--marks', MARKS, '--out', path(out)]);
const marksIn = (name: string) => (JSON.parse(readFileSync(path(name), 'utf8')) as { marks: unknown[] }).marks;

describe('bowline carry', () => {
  it('moves marks along with their measures when one is put in, and ends with 0 where none is left over', async () => {
    const newer = write('longer.musicxml', text([['B5', 'C5', 'B5', 'C5'], ...SCALE]));
    expect(await run(newer, 'longer.json')).toBe(0);
    expect(marksIn('longer.json')).toEqual([
      { part: 'P1', measure: 2, note: 1, finger: 2 },
      { part: 'P1', measure: 2, note: 1, bow: 'down' },
      { part: 'P1', measure: 3, note: 1, finger: 3 },
      { part: 'P1', measure: 3, note: 2, string: 2 },
      { part: 'P1', measure: 5, note: 1, change: { after: '1/2' }, seats: ['1o'] },
    ]);
    expect(JSON.parse(printed)).toMatchObject({ kept: 5, lost: [], changed: [{ part: 'P1', before: null, after: { from: 1, to: 1 } }] });
  });

  it('lists a mark whose note was changed, and one beside it, with the likeliest place, and ends with 1', async () => {
    const newer = write('changed.musicxml', text(SCALE.map((pitches, i) => (i === 1 ? ['G5', 'E5', 'A5', 'B5'] : pitches))));
    expect(await run(newer, 'changed.json')).toBe(1);
    expect(marksIn('changed.json')).toHaveLength(3);
    const told = JSON.parse(printed) as { kept: number; lost: unknown[] };
    expect(told.kept).toBe(3);
    expect(told.lost).toEqual([
      { mark: { part: 'P1', measure: 2, note: 1, finger: 3 }, why: 'changed', text: 'The note is another one in the new edition.', maybe: { part: 'P1', measure: 2, note: 1 } },
      { mark: { part: 'P1', measure: 2, note: 2, string: 2 }, why: 'beside', text: 'The note is the same, the music right beside it is not.', maybe: { part: 'P1', measure: 2, note: 2 } },
    ]);
  });

  it('refuses to write over what it reads, and a second file that is missing', async () => {
    await expect(carry.run([OLD, OLD, '--marks', MARKS, '--out', MARKS])).rejects.toThrow('Choose another name');
    await expect(carry.run([OLD, '--marks', MARKS, '--out', path('x.json')])).rejects.toThrow('the old edition and the new one');
  });
});
