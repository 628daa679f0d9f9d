import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { playedAnywhere } from '../../../core/matching/anywhere.ts';
import type { Run } from '../../../core/matching/run.ts';
import type { Part } from '../../../core/music/part.ts';
import { partOf } from '../../support/partBuilder.ts';

const LEAST = { unison: 4, rhythm: 8 };
const told = ({ likeness, a, b, notes }: Run) => ({ likeness, a: [a.from, a.to], b: [b.from, b.to], notes: notes.length });

describe('music that stands elsewhere', () => {
  it('is found in another part at another time and octave', () => {
    const [violins, cellos] = [partOf('D5:1 E5:1 F5:1 G5:1 | A5:4 | r:4'), partOf('r:4 | D3:1 E3:1 F3:1 G3:1 | A3:4')];
    expect(playedAnywhere(violins, cellos, LEAST).map(told)).toEqual([{ likeness: 'unison', a: [1, 2], b: [2, 3], notes: 5 }]);
  });

  it('is found again in its own part', () => {
    const part = partOf('D5:1 E5:1 F5:1 G5:1 | B5:4 | D5:1 E5:1 F5:1 G5:1 | C5:4');
    expect(playedAnywhere(part, part, LEAST).map(told)).toEqual([{ likeness: 'unison', a: [1, 1], b: [3, 3], notes: 4 }]);
  });

  it('is other music where the silence between differs', () => {
    const part = partOf('D5:1 E5:1 r:1 F5:1 | G5:4 | D5:1 E5:1 r:1/2 F5:1 | G5:4');
    expect(playedAnywhere(part, part, LEAST)).toEqual([]);
  });

  it('is found as a rhythm with its slurs, where that turns often enough', () => {
    const [a, b] = [partOf('D5:3/2( E5:1/2) F5:3/2 G5:1/2 | D5:3/2( E5:1/2) F5:2 | D5:4'), partOf('A4:3/2( B4:1/2) C5:3/2 A4:1/2 | C5:3/2( B4:1/2) A4:2 | A4:4')];
    expect(playedAnywhere(a, b, { unison: 4, rhythm: 8 }).map(told)).toEqual([{ likeness: 'rhythm', a: [1, 3], b: [1, 3], notes: 8 }]);
    const rows = [partOf('D5:1 E5:1 F5:1 G5:1 | D5:1 E5:1 F5:1 G5:1'), partOf('A4:1 B4:1 C5:1 A4:1 | B4:1 B4:1 A4:1 B4:1')] as const;
    expect(playedAnywhere(...rows, LEAST)).toEqual([]);
  });

  it('never runs from one voice into another', () => {
    const part = partOf('D5:1 E5:1 && F4:1 G4:1 | r:4');
    expect(playedAnywhere(partOf('D5:1 E5:1 F4:1 G4:1'), part, { unison: 3, rhythm: 8 })).toEqual([]);
  });
});

const SYMBOLS: Record<string, string> = { D: 'D4:1', E: 'E4:1', F: 'F4:2', '-': 'r:1' };
const music = fc.array(fc.constantFrom('D', 'D', 'E', 'F', '-'), { minLength: 1, maxLength: 30 }).map((letters) => letters.join(''));
const partFrom = (letters: string): Part => partOf(Array.from(letters, (letter) => SYMBOLS[letter]).join(' '));
/** Silences at either end of a part are no music; neighbouring rests are one. */
const trimmed = (letters: string) => letters.replace(/^-+|-+$/g, '');

/** By trying every place: the same rule of choice, written out. */
function byTrying(a: string, b: string, least: number, isSame: boolean): string[] {
  const silences = (letters: string, at: number) => /^-*/.exec(letters.slice(at))![0].length;
  const found: string[] = [];
  const order = (letters: string, at: number) => letters.slice(0, at).replaceAll('-', '').length;
  for (let at = 0; at < b.length; ) {
    let [best, length, notes] = [-1, 0, 0];
    for (let from = 0; b[at] !== '-' && from < a.length; from += 1) {
      if (a[from] === '-') continue;
      let [k, inBoth] = [0, 0];
      while (at + k < b.length && from + k < (isSame ? at : a.length) && a[from + k] === b[at + k]) {
        if (b[at + k] === '-') {
          const rest = silences(b, at + k);
          if (silences(a, from + k) !== rest || (isSame && from + k + rest > at)) break;
          k += rest;
        } else {
          inBoth += 1;
          k += 1;
        }
      }
      if (k > length) [best, length, notes] = [from, k, inBoth];
    }
    if (notes >= least) {
      found.push(`${order(a, best)}>${order(b, at)}x${notes}`);
      at += length;
    } else at += 1;
  }
  return found;
}

const brief = (run: Run) => `${run.a.first}>${run.b.first}x${run.notes.length}`;

describe('runs at any time equal those found by trying every place', () => {
  it('between two parts', () => {
    fc.assert(
      fc.property(music, music, fc.integer({ min: 1, max: 5 }), (one, other, least) => {
        expect(playedAnywhere(partFrom(one), partFrom(other), { unison: least, rhythm: 1000 }).map(brief)).toEqual(byTrying(trimmed(one), trimmed(other), least, false));
      }),
      { numRuns: 150 },
    );
  });

  it('within one part', () => {
    fc.assert(
      fc.property(music, fc.integer({ min: 1, max: 5 }), (letters, least) => {
        const part = partFrom(letters);
        expect(playedAnywhere(part, part, { unison: least, rhythm: 1000 }).map(brief)).toEqual(byTrying(trimmed(letters), trimmed(letters), least, true));
      }),
      { numRuns: 150 },
    );
  });

  it('pairs notes of the same pitch and length', () => {
    const part = partFrom('DEFDEFD');
    expect(playedAnywhere(part, part, { unison: 3, rhythm: 1000 })[0]!.notes).toEqual([['m1n0', 'm1n3'], ['m1n1', 'm1n4'], ['m1n2', 'm1n5']]);
  });
});
