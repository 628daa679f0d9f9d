import type { BowEvent, Voice } from '../bowing/events.ts';
import { type HandPlace, handPlaces, type StoppingFinger } from '../hand/handPlace.ts';
import type { SeatId } from '../music/seat.ts';
import { type CheckContext, soundingOf } from './context.ts';
import { fingeredPlaces } from './fingeredPlaces.ts';
import type { NoteMarks } from './seatMarks.ts';

/** A single note with a stopping finger marked, and every place the hand may be in for it. */
export interface MarkedStop {
  event: BowEvent;
  finger: StoppingFinger;
  places: HandPlace[];
  marks: NoteMarks;
}

/** Two marked stops that follow each other in a voice, as some seats see them. */
export interface MarkedStep {
  from: MarkedStop;
  to: MarkedStop;
  /** No note between them. */
  adjacent: boolean;
  seats: readonly SeatId[];
}

/** A note as the hand comes to it and as it leaves it: a substitution changes the finger on the way. */
interface Stop {
  arriving: MarkedStop | null;
  leaving: MarkedStop | null;
}

function stopWith(part: CheckContext, event: BowEvent, marks: NoteMarks, finger: NoteMarks['finger']): MarkedStop | null {
  const midi = soundingOf(event);
  const { pitch } = event.head;
  if (event.notes.length > 1 || event.head.grace || !pitch || midi === undefined || marks.harmonic || !finger || finger === 'thumb') return null;
  const places = handPlaces(part.instrument, { pitch, midi, finger, ...(marks.string ? { string: marks.string } : {}) });
  return places.length ? { event, finger, places, marks } : null;
}

function stopOn(part: CheckContext, event: BowEvent, marks: NoteMarks): Stop {
  const arriving = stopWith(part, event, marks, marks.finger);
  return { arriving, leaving: marks.substitution === undefined ? arriving : stopWith(part, event, marks, marks.substitution) };
}

/** Steps over the events at `places`; no other event bears a finger. */
function stepsIn(voice: Voice, places: readonly number[], marksOn: (note: string) => NoteMarks, stopAt: (event: BowEvent, marks: NoteMarks) => Stop): Omit<MarkedStep, 'seats'>[] {
  const steps: Omit<MarkedStep, 'seats'>[] = [];
  let from: { stop: MarkedStop; at: number } | null = null;
  for (const at of places) {
    const event = voice[at]!;
    const marks = marksOn(event.head.id);
    if (marks.finger === undefined) continue;
    const { arriving, leaving } = stopAt(event, marks);
    if (arriving && from) steps.push({ from: from.stop, to: arriving, adjacent: at === from.at + 1 });
    from = leaving && { stop: leaving, at };
  }
  return steps;
}

function readSteps(part: CheckContext): MarkedStep[] {
  const stops = new Map<NoteMarks, Stop>();
  // Players whose marks on a note differ, but not for the hand, make one and the same step.
  const alike = new Map<string, Stop>();
  const stopAt = (event: BowEvent, marks: NoteMarks): Stop => {
    const known = stops.get(marks);
    if (known) return known;
    const { finger, substitution, string, reach, harmonic, slur } = marks;
    const key = [event.head.id, finger, substitution, string, reach, harmonic, slur].join();
    const stop = alike.get(key) ?? stopOn(part, event, marks);
    alike.set(key, stop);
    stops.set(marks, stop);
    return stop;
  };
  const places = fingeredPlaces(part);
  const known = new Map<MarkedStop, Map<MarkedStop, SeatId[]>>();
  const steps: MarkedStep[] = [];
  for (const { seats, marksOn } of part.groups) {
    for (const step of part.voices.flatMap((voice, i) => stepsIn(voice, places[i]!, marksOn, stopAt))) {
      const onward = known.get(step.from) ?? known.set(step.from, new Map()).get(step.from)!;
      const same = onward.get(step.to);
      if (same) same.push(...seats);
      else {
        const own = [...seats];
        onward.set(step.to, own);
        steps.push({ ...step, seats: own });
      }
    }
  }
  return steps;
}

const read = new WeakMap<CheckContext, readonly MarkedStep[]>();

/**
 * Every pair of marked single stops that follow each other in a voice, once for each different reading in the section; worked out once for a part as
 * marked. Notes without a finger between them are passed over; an open string, the thumb, a harmonic or a fingered chord between them breaks the pair.
 * Grace notes are no stops, as they have no time of their own. Example: fingers on the first and third of four notes give one pair that is not adjacent.
 */
export function markedSteps(part: CheckContext): readonly MarkedStep[] {
  const before = read.get(part);
  if (before) return before;
  const steps = readSteps(part);
  read.set(part, steps);
  return steps;
}
