import type { Term } from './term.ts';

/** A move in too little time; over 1 no hand makes it. */
export const haste: Term = {
  name: 'haste',
  unit: 'squared share of the time between the onsets that the move needs',
  source: 'minimum-jerk movement; the square is chosen, not measured',
  step: (_player, step, _a, _b, timing) => Math.min(9, (step.needs / Math.max(timing.available, 0.01)) ** 2),
};
