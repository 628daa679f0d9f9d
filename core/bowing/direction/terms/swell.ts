import type { BowTerm } from './term.ts';

/** A crescendo goes up, a diminuendo down. */
export const swell: BowTerm = {
  name: 'swell',
  unit: 'bows against a hairpin',
  source: "E. Green, Orchestral Bowings and Routines, 1957, from memory",
  because: 'the sound grows towards the frog and falls towards the tip',
  stroke: ({ swell: sign }, direction) => ((sign === 1 && direction === 'down') || (sign === -1 && direction === 'up') ? 1 : 0),
};
