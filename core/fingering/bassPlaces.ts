import type { Instrument, StringNumber } from '../instruments/instrument.ts';
import { THUMB, type Place } from './frame.ts';

/** Fingers 1, 2, 4 a semitone apart (simandl); 3 takes the place of 4 from about position VI-VII. */
const HAND: readonly (readonly [number, number])[] = [[1, 0], [2, 1], [4, 2]];
const THREE_FROM = 11;
const HIGHEST_NECK = 12;
const FIRST_THUMB = 14;
const HIGHEST = 20;
const OVER_OPEN = [1, 2, 4, 5, 7];

/**
 * The places of a sounding pitch on the double bass: the 1-2-4 hand up to VII, 3 for 4 from VI-VII, thumb position from the half-string harmonic.
 * `position` is finger 1 in semitones above the open string. Empty outside the instrument. Example: A flat 1 (32) is finger 4 at position 2 on string 4.
 */
export function bassPlaces(instrument: Instrument, midi: number): Place[] {
  return ([1, 2, 3, 4] as StringNumber[]).flatMap((string) => {
    const above = midi - instrument.openStrings[string - 1]!;
    const place = (finger: number, position: number): Place => ({ string, finger, position, above, off: 0, respelled: 0 });
    if (above === 0) return OVER_OPEN.map((position) => place(0, position));
    if (above < 0) return [];
    const places: Place[] = [];
    for (const [finger, from] of HAND) {
      const position = above - from;
      if (position < 1 || position > HIGHEST_NECK) continue;
      places.push(place(finger === 4 && position >= THREE_FROM ? 3 : finger, position));
    }
    for (let position = FIRST_THUMB; position <= HIGHEST; position += 1) {
      const finger = above - position + 2;
      if (finger === 0) places.push(place(THUMB, position));
      else if (finger === 2) places.push(place(1, position));
      else if (finger === 3 || finger === 4) places.push(place(2, position));
      else if (finger === 5) places.push(place(3, position));
    }
    return places;
  });
}
