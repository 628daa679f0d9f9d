import { Table } from './table.ts';

/** How one row is laid over another. */
export interface Laid {
  /** For each symbol of the first row the index of its partner in the second; -1 where it has none. */
  partner: Int32Array;
  /** 1 where every way to lay the rows that is about as good has the same partner. */
  certain: Uint8Array;
  /** What it costs: 2 a changed symbol, 3 a gap and 1 each symbol in it. */
  cost: number;
}

/** Ways that cost up to so much more are about as good: one changed symbol. Chosen, not measured. */
const ABOUT_AS_GOOD = 2;
/** Most cells of a table; longer and more different rows are compared near their diagonal alone. Chosen, not measured. */
const MOST_CELLS = 200_000_000;

/**
 * Lays a row of symbols over another so that as little as possible is changed, put in or taken out (affine gaps: one long gap is cheaper than two), and
 * tells which pairs are certain: no way that costs up to one changed symbol more pairs that symbol with another one or leaves it out. Where music repeats and
 * one repetition is gone, it cannot be known which, so none of them is certain.
 * Exact over both whole rows: the band round the diagonal is widened until nothing outside it can be about as good (above `MOST_CELLS` it is not).
 * Source: Gotoh, An improved algorithm for matching biological sequences (1982); the band after Ukkonen, Algorithms for approximate string matching (1985).
 * Example: `align([1, 2, 3, 4], [1, 2, 4]).partner` is 0, 1, -1, 2.
 */
export function align(a: ArrayLike<number>, b: ArrayLike<number>): Laid {
  const apart = Math.abs(a.length - b.length);
  const whole = Math.max(a.length, b.length);
  for (let beyond = 16; ; beyond *= 2) {
    const width = apart + 2 * beyond + 1;
    const isLast = beyond >= whole || (width * 2 - apart) * (a.length + 1) > MOST_CELLS;
    const table = new Table(a, b, beyond);
    if (isLast || table.cost + ABOUT_AS_GOOD < 6 + apart + 2 * (beyond + 1)) return { ...table.trace(ABOUT_AS_GOOD), cost: table.cost };
  }
}
