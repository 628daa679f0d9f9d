import type { BowTerm } from './term.ts';

/** The strong beat in the middle of the measure goes down. */
export const middle: BowTerm = {
  name: 'middle',
  unit: 'up-bows on the middle beat',
  source: "K. Gehrkens, Essentials in Conducting, 1919",
  because: 'the strong beat in the middle of the measure goes down',
  stroke: ({ level }, direction) => (level === 1 && direction === 'up' ? 1 : 0),
};
