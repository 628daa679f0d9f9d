import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { slipsOf } from '../../../core/archive/slips.ts';
import type { Mark } from '../../../core/music/mark.ts';

const NOTES = new Map<string, number>(Array.from({ length: 200 }, (_, i) => [`n${i + 1}`, i + 1]));
const on = (...measures: number[]): Mark[] => measures.map((measure) => ({ note: `n${measure}`, value: { kind: 'bow', bow: 'up' } }));
const ranges = (marks: Mark[]): [number, number][] => slipsOf(marks, NOTES).map(({ from, to }) => [from, to]);

describe('marks put together to slips', () => {
  it('neighbours are one slip, two empty measures do not part them, three do', () => {
    expect(ranges(on(1, 2, 5, 9))).toEqual([[1, 5], [9, 9]]);
  });

  it('no slip is longer than 24 measures', () => {
    expect(ranges(on(...Array.from({ length: 50 }, (_, i) => i + 1)))).toEqual([[1, 24], [25, 48], [49, 50]]);
  });

  it('no slip has more than 300 marks, unless one measure has', () => {
    const many = (measure: number, n: number): Mark[] => Array.from({ length: n }, () => on(measure)[0]!);
    expect(slipsOf([...many(1, 200), ...many(2, 200), ...many(3, 100)], NOTES).map(({ marks }) => marks.length)).toEqual([200, 300]);
  });

  it('every mark on a note that is there is in exactly one slip, in the order of the music', () => {
    fc.assert(
      fc.property(fc.array(fc.integer({ min: 1, max: 210 }), { maxLength: 60 }), (measures) => {
        const slips = slipsOf(on(...measures), NOTES);
        expect(slips.flatMap(({ marks }) => marks.map(({ note }) => NOTES.get(note)))).toEqual(measures.filter((measure) => measure <= 200).sort((a, b) => a - b));
        slips.forEach(({ from, to, marks }, i) => {
          expect(marks.every(({ note }) => from <= NOTES.get(note)! && NOTES.get(note)! <= to)).toBe(true);
          if (i) expect(from).toBeGreaterThan(slips[i - 1]!.to);
        });
      }),
    );
  });
});
