import type { Term } from './term.ts';

/** From here finger 1 stands a tone above the thumb on cello and bass. */
const FROM = 14;

/** Thumb position where the neck hand would do. */
export const thumbPosition: Term = {
  name: 'thumb-position',
  unit: 'notes',
  source: 'common practice, no source',
  place: (player, place) => (player.instrument.positionsBy === 'semitone' && place.finger !== 0 && place.position >= FROM ? 1 : 0),
};
