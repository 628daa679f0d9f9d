import { sha256 } from '@noble/hashes/sha2.js';
import type { ExactTime } from './time.ts';

const ALPHABET = 'abcdefghijklmnopqrstuvwxyz234567';
const encoder = new TextEncoder();

/** Where a note stands, without its pitch: a corrected pitch keeps its id. */
export interface NotePlace {
  part: string;
  /** Ordinal of the measure. */
  measure: number;
  rest: boolean;
  grace: boolean;
  onset: ExactTime;
  /** Count, from 0 and in document order, among notes of which all the above is the same. */
  rank: number;
}

/**
 * Id of a note from its place alone: the same file gives the same ids on every machine.
 * @returns "n" and 12 characters of base 32 (60 bits of SHA-256)
 * Example: the first note of part "P1" is always "n" + the same 12 characters.
 */
export function noteIdAt(place: NotePlace): string {
  const hash = sha256(encoder.encode(JSON.stringify([place.part, place.measure, place.rest, place.grace, String(place.onset), place.rank])));
  let id = 'n';
  for (let bit = 0; bit < 60; bit += 5) {
    const pair = ((hash[bit >> 3] ?? 0) << 8) | (hash[(bit >> 3) + 1] ?? 0);
    id += ALPHABET[(pair >> (11 - (bit & 7))) & 31];
  }
  return id;
}

/** Gives the notes of one measure their ids, in document order. */
export function noteIds(part: string, measure: number, notes: readonly { rest?: true; grace?: true; onset: ExactTime }[]): string[] {
  const seen = new Map<string, number>();
  return notes.map((note) => {
    const rest = note.rest === true;
    const grace = note.grace === true;
    const key = `${rest} ${grace} ${note.onset}`;
    const rank = seen.get(key) ?? 0;
    seen.set(key, rank + 1);
    return noteIdAt({ part, measure, rest, grace, onset: note.onset, rank });
  });
}
