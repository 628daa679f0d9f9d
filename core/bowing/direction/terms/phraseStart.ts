import type { BowTerm } from './term.ts';

/** A phrase that begins on a strong place begins down-bow. */
export const phraseStart: BowTerm = {
  name: 'phraseStart',
  unit: 'up-bows at the beginning of a phrase',
  source: "K. Gehrkens, Essentials in Conducting, 1919",
  because: 'a phrase that begins on a strong beat begins down-bow',
  stroke: ({ level, restBefore }, direction) => (restBefore > 0 && level <= 1 && direction === 'up' ? 1 : 0),
};
