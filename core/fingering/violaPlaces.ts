import type { Breadth, Place } from './frame.ts';
import { violinPlaces } from './violinPlaces.ts';

/** A fifth: the viola's strings lie that far below the violin's, and its hand is set the same way. */
const SEMITONES = 7;
const STEPS = 4;

/** The places of a pitch on the viola: those of the violin for the pitch a fifth higher. Example: open C (48) is finger 0 on string 4. */
export function violaPlaces(midi: number, step: number, breadth: Breadth = 'usual'): Place[] {
  return violinPlaces(midi + SEMITONES, step + STEPS, breadth);
}
