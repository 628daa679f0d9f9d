import { describe, expect, it } from 'vitest';
import { copyFor } from '../../../client/views/stand/elsewhere/copyFor.ts';
import { figuresLike } from '../../../core/matching/figure.ts';
import type { Mark } from '../../../core/music/mark.ts';
import { partOf } from '../../support/partBuilder.ts';

const part = { ...partOf('B4:1( C5:1) D5:1 r:1 | B4:1( C5:1) D5:1 r:1 | E5:1( F5:1) G5:1 r:1 | B3:1 C4:1 D4:1 r:1'), instrument: 'violin' as const };
const NOTES = ['m1n0', 'm1n1', 'm1n2'];
const copies = (marks: Mark[]) => figuresLike(part, NOTES).map((figure) => ({ in: figure.run.b.from, ...copyFor({ part, marks, seats: ['1o', '1i'] }, figure) }));
const finger = (note: string, n: 0 | 1 | 2 | 3): Mark => ({ note, value: { kind: 'finger', finger: n } });
const string = (note: string, n: 1 | 2 | 3 | 4): Mark => ({ note, value: { kind: 'string', string: n } });

describe('marks copied to the same figure elsewhere', () => {
  it('fingers go along, note for note, at the same pitch and moved', () => {
    const found = copies([finger('m1n0', 1), finger('m1n1', 2)]);
    expect(found.map(({ in: measure, marks, behind }) => [measure, marks, behind])).toEqual([
      [2, [finger('m2n0', 1), finger('m2n1', 2)], 0],
      [3, [finger('m3n0', 1), finger('m3n1', 2)], 0],
      [4, [finger('m4n0', 1), finger('m4n1', 2)], 0],
    ]);
  });

  it('a string goes only where the pitch lies on it', () => {
    // B3 and C4 lie below the A string.
    const found = copies([finger('m1n0', 1), string('m1n0', 2), string('m1n1', 2)]);
    expect(found.map(({ in: measure, fingered, behind }) => [measure, fingered, behind])).toEqual([[2, 3, 0], [3, 3, 0], [4, 0, 3]]);
  });

  it('a string does not go where the music lies a string further, though it could be reached', () => {
    const octave = { ...partOf('B4:1 C5:1 r:2 | B5:1 C6:1 r:2'), instrument: 'violin' as const };
    const found = figuresLike(octave, ['m1n0', 'm1n1']).map((figure) => copyFor({ part: octave, marks: [string('m1n0', 2)], seats: ['1o'] }, figure));
    expect(found.map(({ marks, behind }) => [marks, behind])).toEqual([[[], 1]]);
  });

  it('an open string goes only where the pitch is one', () => {
    const open = { ...partOf('A4:1 B4:1 r:2 | A4:1 B4:1 r:2 | B4:1 C#5:1 r:2'), instrument: 'violin' as const };
    const found = figuresLike(open, ['m1n0', 'm1n1']).map((figure) => copyFor({ part: open, marks: [finger('m1n0', 0), finger('m1n1', 1)], seats: ['1o'] }, figure).marks);
    expect(found).toEqual([[finger('m2n0', 0), finger('m2n1', 1)], [finger('m3n1', 1)]]);
  });

  it('bows go anywhere, and slurs with them, once a bow is marked', () => {
    const found = copies([{ note: 'm1n2', value: { kind: 'bow', bow: 'down' } }]);
    expect(found.map(({ marks }) => marks.filter(({ value }) => value.kind === 'bow').map(({ note }) => note))).toEqual([['m2n2'], ['m3n2'], ['m4n2']]);
  });

  it('what stands there already is not written again, and marks for some seats stay with those', () => {
    expect(copies([finger('m1n0', 1), finger('m2n0', 1)])[0]!.marks).toEqual([]);
    expect(copies([{ ...finger('m1n0', 1), seats: ['1o'] }]).map(({ marks }) => marks)).toEqual([[], [], []]);
  });
});
