import type { BowTerm } from './term.ts';

/** The last bow before a rest goes down. */
export const ending: BowTerm = {
  name: 'ending',
  unit: 'up-bows at the end of a phrase',
  source: "common practice, no source",
  because: 'the phrase ends down-bow, where the sound can die away',
  stroke: ({ restAfter }, direction) => (restAfter >= 1 && direction === 'up' ? 1 : 0),
};
