import type { Term } from './term.ts';

/** One finger for two different notes of a string without the hand taking a new position. */
export const fingerSlide: Term = {
  name: 'finger-slide',
  unit: 'semitones slid',
  source: 'common practice, no source',
  step: (_player, step, a, b) => (step.mm === 0 && a.finger !== 0 && a.finger === b.finger && a.string === b.string ? Math.abs(a.above - b.above) : 0),
};
