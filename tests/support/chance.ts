/** A seeded source of chance (mulberry32): the same seed, the same story. */
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
  let state = seed >>> 0;
  const next = () => {
    state = (state + 0x6d2b79f5) >>> 0;
    let t = Math.imul(state ^ (state >>> 15), 1 | state);
    t = (t + Math.imul(t ^ (t >>> 7), 61 | t)) ^ t;
    return ((t ^ (t >>> 14)) >>> 0) / 4294967296;
  };
  return { next, below: (below) => Math.floor(next() * below), happens: (probability) => next() < probability, pick: (list) => list[Math.floor(next() * list.length)]! };
}
