import type { CarriedMark, CarriedPlace } from '../../../core/agreement/carried.ts';
import type { Measure, Note } from '../../../core/music/part.ts';
import type { ShownMark } from '../../../core/engraving/marks/placeMarks.ts';
import { numberOf } from '../../../core/music/printedNumber.ts';
import { shareOfNote } from '../../../core/music/shareOfNote.ts';
import { words } from '../../words/words.ts';

/** How the measures and notes of one edition are called. */
export interface Names {
  /** As printed; the ordinal where nothing is. */
  measure(ordinal: number): string;
  note(id: string): string;
  found(id: string): { note: Note; measure: Measure } | undefined;
}

export function namesOf(measures: readonly Measure[]): Names {
  const byOrdinal = new Map(measures.map((measure) => [measure.ordinal, measure]));
  const notes = new Map(measures.flatMap((measure) => measure.notes.map((note) => [note.id, { note, measure }] as const)));
  return {
    measure(ordinal) {
      const measure = byOrdinal.get(ordinal);
      return measure ? numberOf(measure) : String(ordinal);
    },
    note(id) {
      const pitch = notes.get(id)?.note.pitch;
      return pitch ? words.pitch(pitch) : words.unpitched;
    },
    found: (id) => notes.get(id),
  };
}

/** The measures of the older edition that are told of. */
export const olderMeasures = (places: readonly CarriedPlace[]): Measure[] => places.flatMap(({ before }) => before?.measures ?? []);

/** A mark that did not go along, as it stood; ink as ink, a slip in pencil. */
export function shownOld({ mark: { note, value }, seats, isInk }: CarriedMark, names: Names): ShownMark[] {
  const found = names.found(note);
  if (!found) return [];
  const share = value.kind === 'change' ? shareOfNote(value.after, found.note) : 0;
  return [{ note, value, seats, state: isInk ? 'adopted' : 'proposed', ...(share > 0 ? { share } : {}) }];
}
