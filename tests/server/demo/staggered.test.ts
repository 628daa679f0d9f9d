import { describe, expect, it } from 'vitest';
import { staggeredPlan } from '../../../server/demo/staggered.ts';

// One quarter lasts one second at the tempo of the held line, so quarters are seconds here.
const seconds = (after: number | string): number => (typeof after === 'number' ? after : Number(after.split('/')[0]) / Number(after.split('/')[1]));
const changes = staggeredPlan().map(([measure, , value, seats]) => {
  if (value.kind !== 'change' || !Array.isArray(seats)) throw new Error('only changes, each for its seat');
  return { at: (Number(measure) - 47) * 4 + seconds(value.after), seat: seats[0]! };
});
const seats = [...new Set(changes.map(({ seat }) => seat))];
const of = (seat: string): number[] => changes.filter((change) => change.seat === seat).map(({ at }) => at).sort((a, b) => a - b);

describe('the staggered plan of the held line', () => {
  it('gives each of the twelve players bows of eight seconds at most', () => {
    expect(seats).toHaveLength(12);
    for (const seat of seats) {
      const ends = [0, ...of(seat), 24];
      ends.slice(1).forEach((end, i) => expect(end - ends[i]!).toBeLessThanOrEqual(8));
    }
  });

  it('puts no change on a barline', () => {
    expect(changes.filter(({ at }) => at % 4 === 0)).toEqual([]);
  });

  it('keeps desk partners half a second apart, but for the one place the checker is to find at desk 4', () => {
    const close = [1, 2, 3, 4, 5, 6].flatMap((desk) =>
      of(`${desk}o`).flatMap((outside) => of(`${desk}i`).filter((inside) => Math.abs(inside - outside) < 0.5).map((inside) => [desk, outside, Math.round(inside * 100) / 100])));
    expect(close).toEqual([[4, 11.5, 11.83]]);
  });
});
