import { pitchName, type Pitch } from '../music/pitch.ts';
import type { Measure } from '../music/part.ts';
import type { SeatId } from '../music/seat.ts';
import { counted, listed, measureName, seatsInWords } from './words.ts';

/** What fills a blank of a message: a figure, a word that is the same everywhere or has a known name, or a value that each language puts in its own words. */
export type Fact =
  | string
  | number
  | { pitch: Pitch | null }
  | { count: number; of: 'semitone' | 'quarter' | 'unmarked bow' }
  /** By its ordinal. */
  | { measure: number }
  | { seats: readonly SeatId[] }
  /** Sections, by name. */
  | { names: readonly string[] }
  /** Quarters a minute, where the part prints none. */
  | { assumedTempo: number }
  /** Where none is printed yet. */
  | { assumedDynamic: string };

/** A fact in English; `measures` and `seats` are those of the part. Example: `{ count: 2, of: 'semitone' }` is "2 semitones", `{ pitch: null }` "this note". */
export function factWords(fact: Fact, measures: readonly Measure[], seats: readonly SeatId[]): string {
  if (typeof fact !== 'object') return String(fact);
  if ('pitch' in fact) return fact.pitch ? pitchName(fact.pitch) : 'this note';
  if ('count' in fact) return fact.count === 0 ? 'no time of its own' : counted(fact.count, fact.of);
  if ('measure' in fact) return measureName(measures[fact.measure - 1]!);
  if ('seats' in fact) return seatsInWords(fact.seats, seats);
  if ('names' in fact) return listed(fact.names);
  if ('assumedDynamic' in fact) return `${fact.assumedDynamic} (none is printed yet)`;
  return ` if a quarter goes at ${fact.assumedTempo}`;
}
