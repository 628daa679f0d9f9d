import type { Semitones } from '../instruments/instrument.ts';

export interface NaturalHarmonic {
  /** The string sounds in this many equal parts, 2 to 8. */
  partial: number;
  /** Sounding pitch above the open string. */
  sounds: Semitones;
  /** Where it may be touched, as semitones above the open string were the string stopped there. */
  touched: Semitones[];
}

const coprime = (a: number, b: number): boolean => (b === 0 ? a === 1 : coprime(b, a % b));

/**
 * The natural harmonics an orchestral part asks for. Partials 2 to 8: chosen, higher ones sound too seldom to count on.
 * Model: a node at k/n of the string, k and n without common divisor; stiffness left out. Example: partial 3 sounds 19.02 and is touched at 7.02 or 19.02.
 */
export const NATURAL_HARMONICS: readonly NaturalHarmonic[] = [2, 3, 4, 5, 6, 7, 8].map((partial) => ({
  partial,
  sounds: 12 * Math.log2(partial),
  touched: Array.from({ length: partial - 1 }, (_, i) => i + 1)
    .filter((k) => coprime(partial, k))
    .map((k) => -12 * Math.log2(1 - k / partial)),
}));

/** The harmonic that sounds that far above an open string, to the nearest semitone, or null. Example: 19 is partial 3. */
export function harmonicSounding(semitones: Semitones): NaturalHarmonic | null {
  return NATURAL_HARMONICS.find(({ sounds }) => Math.round(sounds) === semitones) ?? null;
}

/** The harmonic touched that far above an open string, to the nearest semitone, or null. Where several share a place the lowest partial. */
export function harmonicTouched(semitones: Semitones): NaturalHarmonic | null {
  return NATURAL_HARMONICS.find(({ touched }) => touched.some((place) => Math.round(place) === semitones)) ?? null;
}
