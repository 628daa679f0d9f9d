import type { BowTerm } from './term.ts';

/** The first beat of a measure goes down. */
export const downbeat: BowTerm = {
  name: 'downbeat',
  unit: 'up-bows on a barline',
  source: "K. Gehrkens, Essentials in Conducting, 1919",
  because: 'the measure begins down-bow',
  stroke: ({ level }, direction) => (level === 0 && direction === 'up' ? 1 : 0),
};
