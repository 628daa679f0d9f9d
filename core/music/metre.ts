import type { Measure } from './part.ts';
import { exact, quarters, type ExactTime } from './time.ts';
import Fraction from 'fraction.js';

/** How strong a place of the measure is: 0 its beginning, 1 its middle, 2 another beat, 3 half (or a third) of a beat, 4 finer. */
export type MetricLevel = 0 | 1 | 2 | 3 | 4;

interface Metre {
  /** Quarters a measure should last. */
  whole: number;
  beat: number;
  /** Parts of a beat: 3 in compound time. */
  parts: 2 | 3;
}

const CLOSE = 1e-6;
const falls = (value: number, unit: number): boolean => Math.abs(value / unit - Math.round(value / unit)) < CLOSE;

/** Eighths and shorter in threes, more than one three of them, are beaten in threes: common practice, no source. */
const isCompound = (beats: number, beatType: number): boolean => beats > 3 && beats % 3 === 0 && beatType >= 8;

const isCount = (value: number): boolean => Number.isInteger(value) && value > 0;

/** Exact length of one beat of a measure, in quarters; a quarter without a time signature of plain numbers. Example: 6/8 and 15/8 are beaten in "3/2", 2/2 in 2. */
export function beatOf({ time }: Pick<Measure, 'time'>): ExactTime {
  const [beats, beatType] = [Number(time?.beats), Number(time?.beatType)];
  if (!isCount(beatType)) return 1;
  return exact(new Fraction(isCompound(beats, beatType) ? 12 : 4, beatType));
}

/** Length of a measure and of its beat, in quarters, from its time signature. Example: 6/8 has beats of 3/2 in three parts. */
export function metreOf({ time, length }: Measure): Metre {
  const [beats, beatType] = [Number(time?.beats), Number(time?.beatType)];
  if (!(beats > 0) || !isCount(beatType)) return { whole: quarters(length), beat: 1, parts: 2 };
  return { whole: (beats * 4) / beatType, beat: quarters(beatOf({ time })), parts: isCompound(beats, beatType) ? 3 : 2 };
}

/** Quarters that a pick-up measure (the first, or one printed as implicit) lacks before it begins; 0 for every other one. */
export function pickupOf(measure: Measure): number {
  const missing = metreOf(measure).whole - quarters(measure.length);
  return missing > CLOSE && (measure.implicit || measure.ordinal === 1) ? missing : 0;
}

/**
 * Strength of a place `at` quarters into a measure. A pick-up measure (the first, or one printed as implicit) counts from the barline it leads to.
 * A measure without a time signature of plain numbers counts in quarters. Source: common practice.
 * Example: in 4/4 the third beat is 1, in 6/8 the fourth eighth is 1, in 3/4 no place is.
 */
export function metricLevel(measure: Measure, at: number): MetricLevel {
  const { whole, beat, parts } = metreOf(measure);
  const place = at + pickupOf(measure);
  if (Math.abs(place) < CLOSE) return 0;
  if (!falls(place, beat)) return falls(place, beat / parts) ? 3 : 4;
  const count = Math.round(whole / beat);
  return count % 2 === 0 && Math.abs(place - whole / 2) < CLOSE ? 1 : 2;
}
