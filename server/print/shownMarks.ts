import type { ShownMark } from '../../core/engraving/marks/placeMarks.ts';
import type { Note, Part } from '../../core/music/part.ts';
import { quarters } from '../../core/music/time.ts';
import { isOutside } from '../../core/music/seat.ts';
import { isInTheMusic } from './markedText.ts';
import type { PrintOrder } from './order.ts';

/** Marks to be drawn over the engraved music, in ink. */
export function shownMarks(part: Part, marks: PrintOrder['marks']): ShownMark[] {
  const notes = new Map<string, Note>(part.measures.flatMap((measure) => measure.notes).map((note) => [note.id, note]));
  return marks.flatMap((mark): ShownMark[] => {
    const note = notes.get(mark.note);
    if (!note || isInTheMusic(mark)) return [];
    const whole = quarters(note.duration);
    const share = mark.value.kind === 'change' && whole > 0 ? Math.min(1, quarters(mark.value.after) / whole) : 0;
    const below = mark.seats !== 'all' && !mark.seats.some(isOutside);
    return [{ note: mark.note, value: mark.value, seats: mark.seats, state: 'adopted', ...(share > 0 ? { share } : {}), ...(below ? { below } : {}) }];
  });
}
