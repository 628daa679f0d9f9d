import type { Part } from '../../music/part.ts';
import { align } from './align.ts';
import { type Moment, musicRow } from './musicRow.ts';

/** Two editions of a part as rows of moments, and how one lies over the other. */
export interface Apart {
  before: readonly Moment[];
  after: readonly Moment[];
  /** For each moment of `before` its partner in `after`, -1 where it has none. */
  partner: Int32Array;
  /** 1 where no other partner is about as good. */
  certain: Uint8Array;
  /** True where a moment of `before` and its partner say the same; one before the first and one after the last do. */
  isSame(at: number): boolean;
}

/**
 * Lays two editions of a part over each other by their music alone, whatever their measures, voices and ids.
 * Example: of an edition with a measure put in, each moment after it has its partner that many moments later.
 */
export function editionsApart(older: Part, newer: Part): Apart {
  const [before, after] = [musicRow(older), musicRow(newer)];
  const symbols = new Map<string, number>();
  const symbol = ({ says }: Moment) => symbols.get(says) ?? symbols.set(says, symbols.size).get(says)!;
  const { partner, certain } = align(before.map(symbol), after.map(symbol));
  const isSame = (at: number): boolean => at < 0 || at >= before.length || (partner[at]! >= 0 && before[at]!.says === after[partner[at]!]!.says);
  return { before, after, partner, certain, isSame };
}
