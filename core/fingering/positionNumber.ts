import type { Instrument } from '../instruments/instrument.ts';
import type { Place } from './frame.ts';

/** Cello: number of the position by finger 1 of the closed hand, half position 0 (davidoff). */
const CELLO = [0, 0, 1, 1.5, 2, 3, 3.5, 4, 4.5, 5, 5.5, 6, 7];
/** Double bass: half position and eleven others, the ones between written as halves (simandl). */
const BASS = [0, 0, 1, 2, 2.5, 3, 3.5, 4, 5, 5.5, 6, 6.5, 7];

/**
 * The number of the position a player reads: by letter name on violin and viola, after Davidoff on the cello, after Simandl on the bass; 0 is half
 * position, halves lie between. The extended cello hand counts from its second finger, as finger 1 has gone back. Above VII every semitone counts one.
 * `extended` says so of a finger 1 whose neighbours show it.
 * Example: cello E2 with finger 1 of the extended hand on the C string is position 3.
 */
export function positionNumber(instrument: Instrument, place: Place, extended = place.off === 1): number {
  if (instrument.positionsBy === 'letter') return place.position;
  const semitone = place.position + (instrument.name === 'cello' && extended ? 1 : 0);
  const table = instrument.name === 'cello' ? CELLO : BASS;
  return table[semitone] ?? semitone - 5;
}
