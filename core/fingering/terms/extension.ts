import type { Term } from './term.ts';

/** Fingers out of their place in the plain hand. */
export const extension: Term = {
  name: 'extension',
  unit: 'semitones a finger leaves the plain hand',
  source: 'common practice, no source',
  place: (_player, place) => (place.finger === 0 ? 0 : Math.abs(place.off)),
};
