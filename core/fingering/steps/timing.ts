import type { Seconds } from '../../music/seconds.ts';
import type { LineNote } from '../line.ts';

/** What the music allows between two notes. */
export interface StepTiming {
  /** From onset to onset. */
  available: Seconds;
  /** Silence before the second note. */
  rest: Seconds;
  /** How long the second note sounds. */
  sounds: Seconds;
  slurred: boolean;
  /** One of the two is a grace note. */
  grace: boolean;
  /** In force at the second note. */
  dynamic?: string;
}

/** Silences shorter than this are articulation, not rests: chosen, not measured. */
const SHORTEST_REST = 0.05;

/** A grace note before its note, the halves of a broken chord: from memory, editable. */
const IN_ONE_ONSET = 0.08;

/** Timing between two notes of a line at a tempo in quarters a minute. */
export function timingBetween(a: LineNote, b: LineNote, tempo: number): StepTiming {
  const seconds = (quarters: number): Seconds => (quarters * 60) / tempo;
  const rest = seconds(b.at - a.at - a.duration);
  return { available: b.at === a.at ? IN_ONE_ONSET : seconds(b.at - a.at), rest: rest < SHORTEST_REST ? 0 : rest, sounds: seconds(b.duration), slurred: b.slurred, grace: a.duration === 0 || b.duration === 0, ...(b.dynamic === undefined ? {} : { dynamic: b.dynamic }) };
}
