import type { BowTerm } from './term.ts';

/** Accents go down. */
export const accent: BowTerm = {
  name: 'accent',
  unit: 'accented up-bows',
  source: "E. Green, Orchestral Bowings and Routines, 1957, from memory",
  because: 'the accent is heavier down-bow',
  stroke: ({ accented }, direction) => (accented && direction === 'up' ? 1 : 0),
};
