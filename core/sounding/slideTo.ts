import { fingerTravel } from '../fingering/steps/travel.ts';
import { slideSeconds } from '../hand/moveTime.ts';
import type { Instrument, Semitones } from '../instruments/instrument.ts';
import type { Seconds } from '../music/seconds.ts';
import type { Tone } from './tones.ts';

export interface Slide {
  /** Upward positive. */
  semitones: Semitones;
  seconds: Seconds;
}

/** A slide leaves this share of its note to stand: chosen, not measured. */
const STANDS = 0.4;
/** Silence between two notes that no slide sounds through. */
const TOUCHING: Seconds = 1e-3;

/** A note's stop on its string, the thumb as a finger of its own. */
const stopOf = (instrument: Instrument, { midi, fingered }: Tone) => ({ string: fingered.string as 1 | 2 | 3 | 4, finger: fingered.finger === 'thumb' ? 5 : fingered.finger, above: midi - instrument.openStrings[fingered.string - 1]! });

/**
 * The slide that is heard on the way from one tone to the next, or null: as far as the sounding finger travels, as long as the hand needs. Where
 * the fingering's step tells of no slide there is none: a rest, an open string or another finger on another string hides it, and a change of bow a short one.
 * Example: violin, finger 1 from E4 to A4 on the D string in one slur: 5 semitones up in 0.12 s.
 */
export function slideTo(instrument: Instrument, from: Tone, to: Tone): Slide | null {
  const { step } = to.fingered;
  if (to.from - from.to > TOUCHING || (step.slideAlone ?? step.slide) === 0) return null;
  const semitones = fingerTravel(step.kind, stopOf(instrument, from), stopOf(instrument, to), step.semitones);
  if (semitones === 0) return null;
  return { semitones, seconds: Math.min(slideSeconds(step.mm), (1 - STANDS) * (from.to - from.from)) };
}
