import type { Term } from './term.ts';

/** The hand's way along the strings, whatever covers it. */
export const handTravel: Term = {
  name: 'hand-travel',
  unit: 'steps of 30 mm, a shift counting one more',
  source: 'chosen, not measured',
  step: (_player, step) => (step.mm === 0 ? 0 : 1 + step.mm / 30),
};
