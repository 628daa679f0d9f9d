import type { BowEvent } from '../bowing/events.ts';
import type { Note } from '../music/part.ts';
import type { SeatId } from '../music/seat.ts';
import type { CheckContext } from './context.ts';
import { dividedMeasures } from './divided.ts';
import type { NoteMarks } from './seatMarks.ts';

/** Two notes at once that both bear a finger or a string, as some seats see them. */
export interface MarkedDoubleStop {
  event: BowEvent;
  notes: [Note, Note];
  marks: [NoteMarks, NoteMarks];
  seats: SeatId[];
}

const says = ({ finger, string }: NoteMarks): boolean => finger !== undefined || string !== undefined;

/**
 * Double stops whose two notes are both marked, once for each different reading in the section. Left out: chords of more notes, which are broken;
 * harmonics; and what the part says is divided. Example: a finger on one of the two notes alone gives none.
 */
export function markedDoubleStops(part: CheckContext): MarkedDoubleStop[] {
  const pairs = part.voices.flat().filter(({ notes, head }) => notes.length === 2 && !head.grace);
  if (pairs.length === 0) return [];
  const divided = dividedMeasures(part.part);
  return pairs.flatMap((event) => {
    if (divided.has(event.measure)) return [];
    const [one, other] = event.notes as [Note, Note];
    const readings: MarkedDoubleStop[] = [];
    for (const { seats, marksOn } of part.groups) {
      const marks: [NoteMarks, NoteMarks] = [marksOn(one.id), marksOn(other.id)];
      if (!marks.every((mark) => says(mark) && mark.harmonic === undefined)) continue;
      const same = readings.find((reading) => reading.marks.every((mark, i) => mark.finger === marks[i]!.finger && mark.string === marks[i]!.string));
      if (same) same.seats.push(...seats);
      else readings.push({ event, notes: [one, other], marks, seats: [...seats] });
    }
    return readings;
  });
}
