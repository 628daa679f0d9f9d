import type { BowTerm } from './term.ts';

/** Between the beats the bow goes up. */
export const offBeat: BowTerm = {
  name: 'offBeat',
  unit: 'down-bows off the beat',
  source: "common practice, no source",
  because: 'a note off the beat goes up',
  stroke: ({ level }, direction) => (level >= 3 && direction === 'down' ? 1 : 0),
};
