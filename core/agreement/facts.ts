import type { Part } from '../music/part.ts';
import type { SeatId } from '../music/seat.ts';
import type { PartFacts } from './state.ts';

/**
 * What the rules need of a part and the section that plays it. Rests carry no marks, so they are left out.
 * Invariant: `notes` runs in document order.
 * Example: `factsOf(part, seatsFor(12)).notes.get(noteId)` is the ordinal of the note's measure.
 */
export function factsOf(part: Part, seats: readonly SeatId[]): PartFacts {
  const notes = part.measures.flatMap((measure) => measure.notes.filter((note) => !note.rest).map((note) => [note.id, measure.ordinal] as const));
  return { measures: part.measures.length, notes: new Map(notes), seats };
}

/** Where each note comes in the part, from 0, for putting what is said of notes in the order of the music. Example: `placesOf(facts).get(firstNote)` is 0. */
export function placesOf({ notes }: PartFacts): Map<string, number> {
  return new Map([...notes.keys()].map((note, index) => [note, index]));
}
