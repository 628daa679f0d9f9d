import type { BowEvent } from '../bowing/events.ts';
import type { SeatId } from '../music/seat.ts';
import type { CheckContext } from './context.ts';
import type { NoteMarks } from './seatMarks.ts';

/** A note with a mark a rule asks about, as it stands for some seats. */
export interface FingeredNote {
  event: BowEvent;
  marks: NoteMarks;
  /** All who see it so. */
  seats: SeatId[];
}

const sameHand = (a: NoteMarks, b: NoteMarks): boolean => a.finger === b.finger && a.string === b.string && a.harmonic === b.harmonic;

/**
 * Every pitched note (chord members one by one) whose marks satisfy `asks`, once for each different reading of it in the section.
 * Example: a finger for all on one note, and another for 1i, give two.
 */
export function fingeredNotes(part: CheckContext, asks: (marks: NoteMarks) => boolean): FingeredNote[] {
  return part.voices.flat().flatMap((event) =>
    event.notes.flatMap((note) => {
      const readings: FingeredNote[] = [];
      for (const group of part.groups) {
        const marks = group.marksOn(note.id);
        if (!asks(marks)) continue;
        const same = readings.find((reading) => sameHand(reading.marks, marks));
        if (same) same.seats.push(...group.seats);
        else readings.push({ event: note === event.head ? event : { ...event, head: note }, marks, seats: [...group.seats] });
      }
      return readings;
    }),
  );
}
