import { type Dynamic, bowDynamic } from '../bowing/bowLength.ts';
import type { Semitones } from '../instruments/instrument.ts';

/** What decides how much a shift is heard. Factors: a suggestion of the trade's notes on shifts, chosen, not measured. */
export interface ShiftFacts {
  /** How far the hand moves. */
  moves: Semitones;
  /** Over a rest, a plucked note or an open string: only the hand moves, nobody hears it. */
  covered: boolean;
  changesString: boolean;
  /** By one semitone, or on one finger by one semitone. */
  smallStep: boolean;
  underSlur: boolean;
  dynamic: Dynamic;
  /** Both players of a desk make it on the same note. */
  bothPartners: boolean;
}

export const isSoft = (dynamic: Dynamic): boolean => dynamic === 'p' || dynamic === 'pp';
export const isLoud = (dynamic: Dynamic): boolean => dynamic === 'f' || dynamic === 'ff';

/**
 * How exposed a shift is, from 0 upward: its semitones, times a factor for each thing that hides or shows it.
 * Invariants: 0 when covered; never falls when the distance grows. Example: 5 semitones under a slur on one string, both partners, in p: 15.
 */
export function shiftScore(shift: ShiftFacts): number {
  if (shift.covered) return 0;
  return (
    Math.abs(shift.moves) *
    (shift.changesString ? 0.5 : 1) *
    (shift.smallStep ? 0.5 : 1) *
    (shift.underSlur && !shift.changesString ? 1.5 : 1) *
    (shift.bothPartners && isSoft(shift.dynamic) ? 2 : 1) *
    (isLoud(shift.dynamic) ? 0.7 : 1)
  );
}

/** A score from 0 upward brought to 0..1, a half at 12. The bend: chosen, not measured. */
export const exposureOfScore = (score: number): number => score / (score + 12);

const OF_DYNAMIC: Record<Dynamic, number> = { pp: 1, p: 0.9, mp: 0.75, mf: 0.6, f: 0.45, ff: 0.35 };

/** How much the section's sound leaves open, 0 to 1: soft playing hides least. Values chosen, not measured. Example: "ppp" is 1. */
export function exposureAt(printedDynamic: string | null, assumed: Dynamic): number {
  return OF_DYNAMIC[bowDynamic(printedDynamic, assumed)];
}
