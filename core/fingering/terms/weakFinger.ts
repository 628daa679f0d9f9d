import { THUMB } from '../frame.ts';
import type { Term } from './term.ts';

/** The fourth finger or the thumb on a long note, where vibrato is wanted. */
export const weakFinger: Term = {
  name: 'weak-finger',
  unit: 'long notes',
  source: 'common practice, no source; a long note is one of 0.6 s, chosen, not measured',
  place: (_player, place, seconds) => (seconds > 0.6 && (place.finger === 4 || place.finger === THUMB) ? 1 : 0),
};
