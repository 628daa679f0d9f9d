import type { Instrument } from '../instruments/instrument.ts';
import type { Place } from './frame.ts';

/** What two notes held at once are to the hand. */
export type StopKind =
  | 'open-string'
  | 'unison'
  | 'third'
  | 'sixth'
  | 'fifth-one-finger'
  | 'octave-1-4'
  | 'fingered-octave-1-3'
  | 'fingered-octave-2-4'
  | 'tenth'
  | 'other-stop';

const BY_INTERVAL: Readonly<Record<number, StopKind>> = { 0: 'unison', 3: 'third', 4: 'third', 8: 'sixth', 9: 'sixth', 15: 'tenth', 16: 'tenth' };
const OCTAVES: Readonly<Record<string, StopKind>> = { 14: 'octave-1-4', 13: 'fingered-octave-1-3', 24: 'fingered-octave-2-4' };

/**
 * The trade's name of a double stop, by its fingers and its interval in semitones; with an open string the hand is free and it is named so.
 * Example: violin, finger 1 on the D string and 4 on the A string an octave above is 'octave-1-4'.
 */
export function stopKind(instrument: Instrument, a: Place, b: Place): StopKind {
  if (a.finger === 0 || b.finger === 0) return 'open-string';
  const pitch = (place: Place): number => instrument.openStrings[place.string - 1]! + place.above;
  const interval = Math.abs(pitch(a) - pitch(b));
  if (a.finger === b.finger) return 'fifth-one-finger';
  if (interval === 12) return OCTAVES[`${Math.min(a.finger, b.finger)}${Math.max(a.finger, b.finger)}`] ?? 'other-stop';
  return BY_INTERVAL[interval] ?? 'other-stop';
}
