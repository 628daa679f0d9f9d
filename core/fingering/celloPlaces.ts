import type { StringNumber } from '../instruments/instrument.ts';
import type { Place } from './frame.ts';
import { THUMB } from './frame.ts';

const OPEN_MIDI = [57, 50, 43, 36] as const;
/** Finger 1 to 4 above finger 1: closed, and extended with 1 left behind (davidoff); finger 1 alone does not tell which, and counts as closed. */
const CLOSED = [0, 1, 2, 3] as const;
const EXTENDED = [0, 2, 3, 4] as const;
/** Fourth finger not above G sharp on the A string (davidoff). */
const FOURTH_UP_TO = 11;
/** Up to here finger 1 of the neck hand goes; from IV 1/2 three fingers; from the half-string harmonic the thumb (davidoff). */
const HIGHEST_NECK = 13;
const FIRST_THUMB = 14;
const HIGHEST = 24;
/** Thumb to 1, 2, 3 in thumb position: a tone to 1, a perfect fourth or tritone to 3. */
const THUMB_HAND: readonly (readonly number[])[] = [[1, 2], [2, 3, 4], [4, 5, 6]];
/** While an open string sounds the hand may stand ready with finger 1 here: chosen, not measured. */
const OVER_OPEN = [1, 2, 3, 4, 5, 7];

function neck(string: StringNumber, above: number): Place[] {
  const places: Place[] = [];
  for (const off of [0, 1]) {
    const hand = off === 0 ? CLOSED : EXTENDED;
    hand.forEach((from, i) => {
      const position = above - from;
      const finger = i + 1;
      const isCopy = finger === 1 && off === 1;
      const allowed = !isCopy && position >= 1 && position <= HIGHEST_NECK && !(finger === 4 && above > FOURTH_UP_TO);
      if (allowed) places.push({ string, finger, position, above, off, respelled: 0 });
    });
  }
  return places;
}

/** In thumb position the place is named by finger 1, a tone above the thumb. */
function thumbPosition(string: StringNumber, above: number): Place[] {
  const places: Place[] = [];
  for (let position = FIRST_THUMB; position <= HIGHEST; position += 1) {
    const thumb = position - 2;
    if (above === thumb) places.push({ string, finger: THUMB, position, above, off: 0, respelled: 0 });
    THUMB_HAND.forEach((distances, i) => {
      if (distances.includes(above - thumb)) places.push({ string, finger: i + 1, position, above, off: 0, respelled: 0 });
    });
  }
  return places;
}

/**
 * The places of a pitch on the cello: closed and extended hand in the neck positions (`off` 1 = extended), thumb position from the half-string harmonic.
 * `position` is finger 1 in semitones above the open string. Empty outside the instrument. Example: E2 (40) has finger 3 at position 2 on string 4.
 */
export function celloPlaces(midi: number): Place[] {
  return ([1, 2, 3, 4] as StringNumber[]).flatMap((string) => {
    const above = midi - OPEN_MIDI[string - 1]!;
    if (above === 0) return OVER_OPEN.map((position) => ({ string, finger: 0, position, above, off: 0, respelled: 0 }));
    return above < 0 || above > HIGHEST + 6 ? [] : [...neck(string, above), ...thumbPosition(string, above)];
  });
}
