import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { align } from '../../../../core/matching/editions/align.ts';

/** Every way to lay two short rows over each other, told as partners of the first row, with its cost; written from the definition alone. */
function everyWay(a: readonly number[], b: readonly number[]): { partner: number[]; cost: number }[] {
  const ways: { partner: number[]; cost: number }[] = [];
  const go = (i: number, j: number, last: string, cost: number, partner: number[]) => {
    if (i === a.length && j === b.length) return void ways.push({ partner, cost });
    if (i < a.length && j < b.length) go(i + 1, j + 1, 'pair', cost + (a[i] === b[j] ? 0 : 2), [...partner, j]);
    if (i < a.length) go(i + 1, j, 'a', cost + (last === 'a' ? 1 : 4), [...partner, -1]);
    if (j < b.length) go(i, j + 1, 'b', cost + (last === 'b' ? 1 : 4), partner);
  };
  go(0, 0, '', 0, []);
  return ways;
}

const row = fc.array(fc.integer({ min: 0, max: 2 }), { maxLength: 6 });

describe('two rows laid over each other', () => {
  it('cost the least of all ways there are, and are sure of a pair exactly where every way about as good has it', () => {
    fc.assert(
      fc.property(row, row, (a, b) => {
        const laid = align(a, b);
        const ways = everyWay(a, b);
        const least = Math.min(...ways.map(({ cost }) => cost));
        expect(laid.cost).toBe(least);
        expect(ways.filter(({ cost }) => cost === least).map(({ partner }) => partner.join())).toContain([...laid.partner].join());
        const good = ways.filter(({ cost }) => cost <= least + 2);
        a.forEach((_, i) => {
          const ours = laid.partner[i]!;
          expect(laid.certain[i] === 1).toBe(ours >= 0 && good.every(({ partner }) => partner[i] === ours));
        });
      }),
      { numRuns: 300 },
    );
  });

  it('find a long stretch put in far from the beginning, beyond the first band', () => {
    const long = Array.from({ length: 900 }, (_, i) => i);
    const longer = [...long.slice(0, 500), ...Array.from({ length: 137 }, (_, i) => 5000 + i), ...long.slice(500)];
    const { partner, certain, cost } = align(longer, long);
    expect(cost).toBe(3 + 137);
    expect([...partner]).toEqual([...long.slice(0, 500), ...Array.from({ length: 137 }, () => -1), ...long.slice(500)]);
    // The two beside it could each be called changed and the stretch begin one earlier or end one later: one changed symbol more.
    expect([...certain].flatMap((one, i) => (one === 0 && partner[i]! >= 0 ? [i] : []))).toEqual([499, 637]);
  });

  it('find each other again across a gap on both sides wider than the band they start with', () => {
    const middle = Array.from({ length: 60 }, (_, i) => 100 + i);
    const a = [...Array.from({ length: 300 }, (_, i) => 1000 + i), ...middle];
    const b = [...middle, ...Array.from({ length: 300 }, (_, i) => 2000 + i)];
    // Either the middle is found at 60 x 0 + two gaps of 300, or all is changed at 360 x 2: the first is cheaper.
    expect(align(a, b).cost).toBe(2 * (3 + 300));
  });

  it('are not sure which of equal measures is gone', () => {
    const figure = [1, 2, 3, 4];
    const four = [6, 9, ...figure, ...figure, ...figure, ...figure, 8, 7];
    const three = [6, 9, ...figure, ...figure, ...figure, 8, 7];
    const { certain } = align(three, four);
    expect([certain[0], certain.at(-1)]).toEqual([1, 1]);
    expect([...certain.slice(1, -1)].every((one) => one === 0)).toBe(true);
  });
});
