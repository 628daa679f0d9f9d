import { chanceFrom } from '../../core/bowing/stagger/chance.ts';

/** A seeded source of chance: the same seed, the same story. */
export interface Chance {
  /** In [0, 1). */
  next(): number;
  /** Whole number in [0, below). */
  below(below: number): number;
  /** True with this probability. */
  happens(probability: number): boolean;
  pick<T>(list: readonly T[]): T;
}

export function chance(seed: number): Chance {
  const next = chanceFrom(seed);
  return { next, below: (below) => Math.floor(next() * below), happens: (probability) => next() < probability, pick: (list) => list[Math.floor(next() * list.length)]! };
}
