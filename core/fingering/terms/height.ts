import { handSemitones } from '../handAt.ts';
import type { Term } from './term.ts';

/** High positions, where a string sounds covered and places are close. */
export const height: Term = {
  name: 'height',
  unit: 'octaves of the hand above the nut',
  source: 'common practice, no source',
  place: (player, place) => (place.finger === 0 ? 0 : handSemitones(player.instrument, place) / 12),
};
