import type { Term } from './term.ts';

/** One finger for two different notes of a string. */
export const fingerSlide: Term = {
  name: 'finger-slide',
  unit: 'semitones slid; a shift of the hand on one finger counts one',
  source: 'common practice, no source',
  step: (_player, step, a, b) => {
    if (a.finger === 0 || a.finger !== b.finger || a.string !== b.string || a.above === b.above) return 0;
    return step.mm === 0 ? Math.abs(a.above - b.above) : 1;
  },
};
