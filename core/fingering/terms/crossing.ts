import type { Term } from './term.ts';

/** Changes of string. */
export const crossing: Term = {
  name: 'crossing',
  unit: 'strings crossed',
  source: 'common practice, no source',
  step: (_player, _step, a, b) => Math.abs(a.string - b.string),
};
