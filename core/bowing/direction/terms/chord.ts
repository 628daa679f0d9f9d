import type { BowTerm } from './term.ts';

/** Chords of three notes and more go down. */
export const chord: BowTerm = {
  name: 'chord',
  unit: 'chords up-bow',
  source: "I. Galamian, Principles of Violin Playing and Teaching, 1962, from memory",
  because: 'a chord is broken from the frog, down-bow',
  stroke: ({ chord: notes }, direction) => (notes >= 3 && direction === 'up' ? 1 : 0),
};
