import type { Semitones } from '../../instruments/instrument.ts';
import { THUMB, type Place } from '../frame.ts';

type Stop = Pick<Place, 'string' | 'finger' | 'above'>;

/** Kinds in which a sounding finger travels along its string. */
const SLIDES: ReadonlySet<string> = new Set(['chromatic-slide', 'shift-same-finger', 'shift-departing-finger']);

/** Whether a finger stops the string there. */
export const stopped = ({ finger }: Stop): boolean => finger !== 0 && finger !== THUMB;

/** A higher finger gives way to a lower one going up, or a lower to a higher going down: the hand narrows, and only the interval between the two can sound. */
function isCrossingShift(a: Stop, b: Stop): boolean {
  return stopped(a) && stopped(b) && a.string === b.string && (b.above - a.above) * (b.finger - a.finger) < 0;
}

/**
 * How far the sounding finger travels in a step of this kind, in semitones, upward positive; 0 where none does. `hand`: travel of the hand.
 * Example: finger 1 gives way to 3 while the hand goes up 3: finger 1 is heard to travel 3, then 3 falls.
 */
export function fingerTravel(kind: string, a: Stop, b: Stop, hand: Semitones): Semitones {
  if (!SLIDES.has(kind)) return 0;
  return a.finger === b.finger || isCrossingShift(a, b) ? b.above - a.above : hand;
}
