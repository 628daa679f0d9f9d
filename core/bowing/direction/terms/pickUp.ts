import type { BowTerm } from './term.ts';

/** A phrase that begins on a weak place begins up-bow. */
export const pickUp: BowTerm = {
  name: 'pickUp',
  unit: 'down-bows on a pick-up',
  source: "K. Gehrkens, Essentials in Conducting, 1919",
  because: 'a phrase that begins on a weak beat begins up-bow',
  stroke: ({ level, restBefore }, direction) => (restBefore > 0 && level >= 2 && direction === 'down' ? 1 : 0),
};
