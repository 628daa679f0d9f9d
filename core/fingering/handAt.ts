import type { Instrument, Millimetres, Semitones } from '../instruments/instrument.ts';
import { placeOnString } from '../hand/place.ts';
import type { Place } from './frame.ts';

/** Middle of each named position's first finger, semitones above the open string (tnua); violin and viola. */
const BY_LETTER = [1, 1.5, 3.5, 5.5, 6.5, 8.5, 10.5, 12, 13.5, 15.5, 17.5, 18.5, 20.5];

/** Where finger 1 of the hand is, semitones above the open string, whatever finger plays. Example: third position on the violin is 5.5. */
export function handSemitones(instrument: Instrument, place: Place): Semitones {
  return instrument.positionsBy === 'letter' ? BY_LETTER[place.position]! : place.position;
}

/** How far the hand travels along the strings between two places, in mm; 0 within one position. */
export function handTravel(instrument: Instrument, a: Place, b: Place): Millimetres {
  if (a.position === b.position) return 0;
  const [from, to] = [handSemitones(instrument, a), handSemitones(instrument, b)];
  return Math.abs(placeOnString(to, instrument.stringLength) - placeOnString(from, instrument.stringLength));
}
