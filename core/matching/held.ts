import type { Voice } from '../bowing/events.ts';
import type { Note } from '../music/part.ts';
import { compareTimes, type ExactTime, minus, plus } from '../music/time.ts';
import type { LineEvent } from './line.ts';

/** A place in a held note: a note tied into it, and quarters after that one begins. */
export interface HeldPlace {
  note: Note;
  after: ExactTime;
}

/** The notes tied into one event, each with quarters from its beginning. Example: a half tied to a quarter gives 0 and 2. */
export function tiedNotes(voice: Voice, { first, last }: LineEvent): { note: Note; from: ExactTime }[] {
  let from: ExactTime = 0;
  return voice
    .slice(first, last + 1)
    .filter(({ head }) => !head.grace)
    .map(({ head }) => {
      const here = { note: head, from };
      from = plus(from, head.duration);
      return here;
    });
}

/** Where `offset` quarters into an event lies among its tied notes; null beyond its end. Example: 2 lies at the start of a quarter tied to a half. */
export function heldPlace(voice: Voice, event: LineEvent, offset: ExactTime): HeldPlace | null {
  const under = tiedNotes(voice, event).findLast(({ from }) => compareTimes(from, offset) <= 0);
  if (!under) return null;
  const after = minus(offset, under.from);
  return compareTimes(after, under.note.duration) < 0 ? { note: under.note, after } : null;
}
