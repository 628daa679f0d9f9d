import type { Term } from './term.ts';

/** A grace note and its neighbour with one finger on one string, or with the hand moving between them: a grace note needs a finger that is free. */
export const graceFinger: Term = {
  name: 'grace-finger',
  unit: 'grace notes without a free finger',
  source: 'common practice, no source',
  applies: ({ grace }) => grace,
  step: (_player, step, a, b, timing) => (timing.grace && a.finger !== 0 && (step.mm > 0 || (a.finger === b.finger && a.string === b.string && a.above !== b.above)) ? 1 : 0),
};
