import type { ShownMark } from '../../core/engraving/marks/placeMarks.ts';
import type { Note, Part } from '../../core/music/part.ts';
import { isInsideAlone } from '../../core/music/seat.ts';
import { shareOfNote } from '../../core/music/shareOfNote.ts';
import { isInTheMusic } from './markedText.ts';
import type { PrintOrder } from './order.ts';

/** Marks to be drawn over the engraved music, in ink. */
export function shownMarks(part: Part, marks: PrintOrder['marks']): ShownMark[] {
  const notes = new Map<string, Note>(part.measures.flatMap((measure) => measure.notes).map((note) => [note.id, note]));
  return marks.flatMap((mark): ShownMark[] => {
    const note = notes.get(mark.note);
    if (!note || isInTheMusic(mark)) return [];
    const share = mark.value.kind === 'change' ? shareOfNote(mark.value.after, note) : 0;
    return [{ note: mark.note, value: mark.value, seats: mark.seats, state: 'adopted', ...(share > 0 ? { share } : {}), ...(isInsideAlone(mark.seats) ? { below: true } : {}) }];
  });
}
