import type { Term } from './term.ts';

/** Slides an audience hears. */
export const slide: Term = {
  name: 'slide',
  unit: 'audibility, 0 to 1',
  source: "'t Hart 1976, through the slide index",
  step: (_player, step) => step.slide,
};
