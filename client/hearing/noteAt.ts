import type { Heard } from './messages.ts';

/** The note that sounds `seconds` into a passage; null before the first. Example: between the onsets of the first and second it is the first. */
export function noteAt(notes: Heard['notes'], seconds: number): string | null {
  return notes.findLast(({ from }) => from <= seconds)?.note ?? null;
}
