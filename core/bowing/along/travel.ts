import type { Instrument, Millimetres } from '../../instruments/instrument.ts';
import type { Seconds } from '../../music/seconds.ts';
import type { BowedStroke } from '../direction/inferDirections.ts';
import { type Direction, turned } from '../strokes.ts';

/** What one bow asks of the hair. */
export interface Travel {
  /** Index of its bow in the bowing; the halves of a split slur share it. */
  stroke: number;
  direction: Direction;
  seconds: Seconds;
  /** Drawn at the usual speed of its dynamic and stroke. */
  usual: Millimetres;
  /** Drawn as slowly as the dynamic allows. */
  least: Millimetres;
  /** Drawn as fast as a bow goes. */
  most: Millimetres;
  /** There was time to place the bow anew before it. */
  placed: boolean;
}

/** Usual speed, of the slowest a dynamic allows: the comfortable seconds a bow of the common tables are about two thirds of the limits. Chosen, not measured. */
const USUAL = 1.5;
/** A staccato stops the bow for half of its note, an accent draws more of it. Chosen, not measured. */
const STACCATO = 0.5;
const ACCENT = 1.25;
/** Fast whole bow, mm/s (A. Askenfelt, Measurement of bow motion, 1986, from memory). */
const FASTEST = 1000;
/** Silence in which the bow is placed anew, seconds: chosen, not measured. */
const TIME_TO_PLACE = 0.15;

/**
 * The bows of a bowing as lengths of hair in mm, in order of time. A retake and a rest of 0.15 s and more leave time to place the bow anew.
 * Invariant: least <= usual. Example: 2 s at mf on a violin (5.5 s a bow at most): least 236, usual 355, most 2000.
 */
export function travels(strokes: readonly BowedStroke[], instrument: Instrument): Travel[] {
  return strokes.flatMap(({ facts, direction, split, repeats }, stroke): Travel[] => {
    const share = (facts.staccato ? STACCATO : 1) * (facts.accented ? ACCENT : 1);
    const parts = split ? 2 : 1;
    const least = (facts.bows * instrument.bowHair * share) / parts;
    const seconds = facts.seconds / parts;
    const travel: Travel = { stroke, direction, seconds, least, usual: least * USUAL, most: Math.max(least * USUAL, seconds * FASTEST), placed: stroke === 0 || repeats || facts.silence >= TIME_TO_PLACE };
    return split ? [travel, { ...travel, direction: turned(direction), placed: false }] : [travel];
  });
}
