import type { StringNumber } from '../instruments/instrument.ts';
import type { Breadth, Place } from './frame.ts';

/** Lowest and highest plain place of each step above the open string, in semitones (tnua; 93 % of 97,617 stopped notes fit exactly). */
const BAND: readonly (readonly [number, number])[] = [
  [0, 0], [1, 2], [3, 4], [5, 6], [6, 7], [8, 9], [10, 11], [12, 12], [13, 14], [15, 16], [17, 18], [18, 19], [20, 21], [22, 23], [24, 24], [25, 26],
];
const OPEN_MIDI = [76, 69, 62, 55] as const;
const OPEN_STEP = [37, 33, 29, 25] as const;
const HIGHEST_POSITION = 12;
/** While an open string sounds the hand may stand ready up to here: chosen, not measured. */
const HIGHEST_OVER_OPEN = 5;

/** Semitones by which a stopped note leaves the band of its place in the hand. */
function offBand(above: number, step: number): number {
  const [low, high] = BAND[step]!;
  return above < low ? above - low : above > high ? above - high : 0;
}

/** What the breadth `reaches` adds: 4 reaches two semitones further, the lower fingers two back, as in tenths, fingered octaves and delayed shifts. */
function isReach({ finger, off, respelled }: Place): boolean {
  return finger === 4 ? off > 0 && off <= 2 && respelled >= -2 && respelled <= 0 : off < 0 && off >= -2 && respelled <= 2 && respelled >= 0;
}

function plausible(midi: number, place: Place, breadth: Breadth): boolean {
  const { string, finger, position, off, respelled } = place;
  if (breadth === 'all' && Math.abs(off) <= 2 && Math.abs(respelled) <= 2) return true;
  if (breadth === 'reaches' && position <= 7 && isReach(place)) return true;
  if (Math.abs(off) > 1 || Math.abs(respelled) > 1) return false;
  if (position > 7 && !(string === 1 && midi >= 88)) return false;
  if (string > 1 && midi - OPEN_MIDI[string - 2]! >= 13) return false;
  if (respelled === -1 && off === 1 && finger !== 1 && finger !== 4) return false;
  if (respelled === 1 && off === -1 && finger === 1) return false;
  return off === 0 || respelled === 0 || position <= 5 || midi >= 85;
}

/**
 * The places of a pitch on the violin: every string, position 1 to 12 and finger whose plain hand, or a reach of a semitone, takes it there.
 * `step` is the staff step from C0 as spelled. Pruned to what professionals use (97 % of their marks remain). Empty outside the instrument.
 * `breadth` adds the long reaches that delayed shifts use, or all that marks and chords may ask for.
 * Invariant: ordered by string, position, finger. Example: B4 (71, step 34) has finger 1 in position 1 on string 2 among its places.
 */
export function violinPlaces(midi: number, step: number, breadth: Breadth = 'usual'): Place[] {
  const places: Place[] = [];
  for (const string of [1, 2, 3, 4] as StringNumber[]) {
    const above = midi - OPEN_MIDI[string - 1]!;
    if (above === 0) {
      for (let position = 1; position <= HIGHEST_OVER_OPEN; position += 1) places.push({ string, finger: 0, position, above, off: 0, respelled: 0 });
    }
    if (above <= 0 || above > 27) continue;
    const spelled = step - OPEN_STEP[string - 1]!;
    for (let position = 1; position <= HIGHEST_POSITION; position += 1) {
      for (let finger = 1; finger <= 4; finger += 1) {
        const inHand = position + finger - 1;
        const place: Place = { string, finger, position, above, off: offBand(above, inHand), respelled: inHand - spelled };
        if (plausible(midi, place, breadth)) places.push(place);
      }
    }
  }
  return places;
}
