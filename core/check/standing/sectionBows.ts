import { type Stroke, strokesOf } from '../../bowing/strokes.ts';
import { strokesLike } from '../../bowing/strokesLike.ts';
import type { Mark } from '../../music/mark.ts';
import type { SeatId } from '../../music/seat.ts';
import type { PartMusic } from '../context.ts';
import { isForAll, marksOnNote, type NoteMarks, seatMarks } from '../seatMarks.ts';

/** The bows of a part as marked for its whole section and as printed, kept while marks change. */
export interface SectionBows {
  printed: readonly Stroke[][];
  /** Reads these notes anew; `marks` are all marks in force, by note. */
  common(marks: ReadonlyMap<string, readonly Mark[]>, changed: readonly string[]): readonly Stroke[][];
}

/** Begins with nobody's marks. Invariant: `common` equals `strokesOf` over the marks for all. Example: one sign moved reads two bows again. */
export function sectionBows({ part, voices }: PartMusic, seats: readonly SeatId[]): SectionBows {
  const asPrinted = seatMarks(part, [], []).forAll;
  const printed = voices.map((voice) => strokesOf(voice, asPrinted));
  const own = new Map<string, NoteMarks>();
  const signsOn = (note: string): NoteMarks => own.get(note) ?? asPrinted(note);
  const places = new Map(voices.flatMap((voice, v) => voice.map((event, at) => [event.head.id, { v, at, note: event.head }] as const)));
  let current: readonly Stroke[][] = printed;
  return {
    printed,
    common(marks, changed) {
      const differing = voices.map((): number[] => []);
      for (const id of changed) {
        const place = places.get(id);
        if (!place) continue;
        own.set(id, marksOnNote(place.note, (marks.get(id) ?? []).filter((mark) => isForAll(mark, seats)).map(({ value }) => value)));
        differing[place.v]!.push(place.at);
      }
      current = current.map((strokes, v) => (differing[v]!.length ? strokesLike(strokes, voices[v]!, signsOn, differing[v]!.sort((a, b) => a - b)) : strokes));
      return current;
    },
  };
}
