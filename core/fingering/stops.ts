import { placeOnString } from '../hand/place.ts';
import { chordReach } from '../hand/reach.ts';
import type { Instrument } from '../instruments/instrument.ts';
import { THUMB, type Place } from './frame.ts';

/** The hand may stand between two named positions while it holds a chord. */
const POSITIONS_APART = 1;

function pairHolds(instrument: Instrument, a: Place, b: Place): boolean {
  if (a.string === b.string) return false;
  if (a.finger === 0 || b.finger === 0) return true;
  if (Math.abs(a.position - b.position) > POSITIONS_APART) return false;
  if (a.finger === b.finger) return a.above === b.above && Math.abs(a.string - b.string) === 1;
  if (a.finger === THUMB || b.finger === THUMB) return true;
  const [low, high] = a.finger < b.finger ? [a, b] : [b, a];
  if (high.above < low.above) return false;
  const span = placeOnString(high.above, instrument.stringLength) - placeOnString(low.above, instrument.stringLength);
  return span <= chordReach(instrument.name, low.finger, high.finger);
}

/**
 * True when one hand holds all the places at once: one note a string, strings side by side, fingers in order, every pair within reach, one finger on
 * two strings only straight across. Open strings are always free. Example: octave G3-G4 with 0 and 3 holds; two notes on one string never do.
 */
export function holdsTogether(instrument: Instrument, places: readonly Place[]): boolean {
  const strings = places.map((place) => place.string).sort();
  if (strings.at(-1)! - strings[0]! !== places.length - 1) return false;
  return places.every((a, i) => places.slice(i + 1).every((b) => pairHolds(instrument, a, b)));
}
