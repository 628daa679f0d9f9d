import type { InstrumentName } from '../music/part.ts';
import type { Millimetres } from '../instruments/instrument.ts';

/** A player's own hand; private, and never used to hide a fingering. */
export interface HandProfile {
  /** Reach beside the usual hand, 0.8 to 1.1. */
  factor: number;
  /** The fourth finger is short: pairs with it reach less. */
  shortFourth: boolean;
}

export const USUAL_HAND: HandProfile = { factor: 1, shortFourth: false };

export type Zone = 'comfortable' | 'stretched' | 'exceptional';

/** Where a pair's comfortable reach ends and where its stretched reach ends. */
export interface Reach {
  comfortable: Millimetres;
  stretched: Millimetres;
}

type Pair = '12' | '23' | '34' | '13' | '24' | '14';
type Table = Record<Pair, readonly [Millimetres, Millimetres]>;

/** Violin: what ten professionals stop one after the other in one position (tnua); the limits are editable settings. */
const VIOLIN: Table = { 12: [36, 48], 23: [33, 40], 34: [30, 36], 13: [66, 80], 24: [60, 70], 14: [78, 108] };
/** Viola: the violin's hand a little further open, as 1-4 spans 84 mm in first position; chosen, not measured. */
const VIOLA: Table = { 12: [40, 52], 23: [37, 44], 34: [34, 40], 13: [73, 88], 24: [66, 77], 14: [90, 118] };
/** Cello: closed 1-4 up to 104 mm in half position, extended up to 137 (davidoff); fingers 2-3-4 a semitone apart. */
const CELLO: Table = { 12: [40, 74], 23: [40, 46], 34: [40, 46], 13: [74, 108], 24: [74, 82], 14: [106, 142] };
/** Double bass: a whole tone from 1 to 4, 109 mm in half position (simandl). */
const BASS: Table = { 12: [62, 70], 23: [62, 66], 34: [62, 66], 13: [112, 122], 24: [62, 66], 14: [112, 130] };

const TABLES: Record<InstrumentName, Table> = { violin: VIOLIN, viola: VIOLA, cello: CELLO, 'double-bass': BASS };

/** What a short fourth finger leaves of a pair's reach: chosen, not measured. */
const SHORT_FOURTH = 0.88;

/**
 * How far two stopping fingers (1-4, different) reach for this player. Model: a table per pair, scaled by the hand; the place on the string
 * comes in through the distance itself, which shrinks going up. Result in mm. Example: 1-4 on the violin is comfortable to 78, stretched to 108.
 */
export function reachOf(instrument: InstrumentName, one: number, other: number, hand: HandProfile = USUAL_HAND): Reach {
  const pair = `${Math.min(one, other)}${Math.max(one, other)}` as Pair;
  const [comfortable, stretched] = TABLES[instrument][pair];
  const scale = hand.factor * (hand.shortFourth && Math.max(one, other) === 4 ? SHORT_FOURTH : 1);
  return { comfortable: comfortable * scale, stretched: stretched * scale };
}

/** Chords are stretched beyond what a line is: tenths (118 mm on the violin in first position) are written and played; chosen, not measured. */
const BEYOND_A_LINE = 1.15;

/** How far two stopping fingers reach when they hold a chord, in mm. Example: 1-4 on the violin to 124. */
export const chordReach = (instrument: InstrumentName, one: number, other: number): Millimetres => reachOf(instrument, one, other).stretched * BEYOND_A_LINE;

/** The zone a distance between two fingers falls in. Example: 97 mm from 1 to 4 on the violin is stretched. */
export function zoneOf(reach: Reach, span: Millimetres): Zone {
  return span <= reach.comfortable ? 'comfortable' : span <= reach.stretched ? 'stretched' : 'exceptional';
}
