import type { Term } from './term.ts';

/** One finger that must lift from a string and fall on another, at another place. */
export const hop: Term = {
  name: 'hop',
  unit: 'hops',
  source: 'common practice, no source',
  step: (_player, _step, a, b) => (a.finger === b.finger && a.finger !== 0 && a.string !== b.string ? (a.above === b.above ? 0.5 : 1) : 0),
};
