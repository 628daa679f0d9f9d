import type { Measure, Note, Part } from '../../core/music/part.ts';
import { minus, plus, quarters, type ExactTime } from '../../core/music/time.ts';

export interface Placed {
  note: Note;
  measure: Measure;
  /** Count among the notes of its measure that can carry marks, from 1. */
  position: number;
}

/** Look-ups a screen needs of one part. */
export interface PartIndex {
  part: Part;
  /** Ids of all notes that can carry marks, in the order they are played. */
  walk: readonly string[];
  notes: ReadonlyMap<string, Placed>;
  /** First markable note of a measure, by ordinal. */
  first: ReadonlyMap<number, string>;
  /** Notes under a slur but its first: a bow change there splits nothing that is not one stroke. */
  underSlur: ReadonlySet<string>;
}

/** Builds the look-ups. Rests and hidden notes carry no marks. */
export function indexPart(part: Part): PartIndex {
  const notes = new Map<string, Placed>();
  const first = new Map<number, string>();
  for (const measure of part.measures) {
    let position = 0;
    for (const note of measure.notes) {
      if (note.rest || note.hidden) continue;
      position += 1;
      notes.set(note.id, { note, measure, position });
      if (!first.has(measure.ordinal)) first.set(measure.ordinal, note.id);
    }
  }
  const walk = [...notes.keys()];
  const order = new Map(walk.map((id, i) => [id, i]));
  const underSlur = new Set(part.slurs.flatMap(({ from, to }) => walk.slice((order.get(from) ?? 0) + 1, (order.get(to) ?? -1) + 1)));
  return { part, walk, notes, first, underSlur };
}

/** Ordinal of the measure a person means by a printed number; the first of several. */
export function findMeasure({ part }: PartIndex, said: string): number | null {
  const wanted = said.trim().toLowerCase();
  const found =
    part.measures.find((measure) => measure.number.toLowerCase() === wanted) ??
    part.measures.find((measure) => measure.rehearsal?.toLowerCase() === wanted) ??
    part.measures.find((measure) => String(measure.ordinal) === wanted);
  return found?.ordinal ?? null;
}

/** `after` moved by `step`, kept inside the note. */
export function moveInside(after: ExactTime, step: ExactTime, direction: 1 | -1, { duration }: Note): ExactTime {
  const moved = direction > 0 ? plus(after, step) : minus(after, step);
  return quarters(moved) < 0 || quarters(moved) >= quarters(duration) ? after : moved;
}
