import type { Instrument, Millimetres, Semitones, StringNumber } from '../instruments/instrument.ts';

const STRINGS: readonly StringNumber[] = [1, 2, 3, 4];

/**
 * Where a string is stopped for a pitch `semitones` above its open pitch, in mm from the nut: x(n) = L (1 - 2^(-n/12)).
 * Ideal string: stiffness, string height and the finger's width are left out. Range 0 to L.
 * Source: equal temperament on an ideal string. Example: a fourth on a violin (328 mm) lies at 82.3 mm.
 */
export function placeOnString(semitones: Semitones, stringLength: Millimetres): Millimetres {
  return stringLength * (1 - 2 ** (-semitones / 12));
}

/** Semitones of a sounding MIDI key above the open string, negative where it lies below. Example: B4 (71) on a violin's string 2 is 2. */
export function semitonesAbove(instrument: Instrument, string: StringNumber, midi: number): Semitones {
  return midi - instrument.openStrings[string - 1]!;
}

/** True when the pitch can sound on that string, open or stopped: from the open string to the end of the fingerboard. */
export function canSoundOn(instrument: Instrument, string: StringNumber, midi: number): boolean {
  const semitones = semitonesAbove(instrument, string, midi);
  return semitones >= 0 && semitones <= instrument.top;
}

/** Strings on which the pitch can sound, the highest string first; empty when it lies outside the instrument. Example: D5 (74) on a violin is [2, 3, 4]. */
export function stringsFor(instrument: Instrument, midi: number): StringNumber[] {
  return STRINGS.filter((string) => canSoundOn(instrument, string, midi));
}

/** The string whose open pitch this is, or null. */
export function openStringAt(instrument: Instrument, midi: number): StringNumber | null {
  return STRINGS.find((string) => instrument.openStrings[string - 1] === midi) ?? null;
}
