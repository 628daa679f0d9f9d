import type { AgreementState } from '../../../core/agreement/state.ts';
import { excludes, type Mark, type MarkValue } from '../../../core/music/mark.ts';
import { isFor, type SeatId, type Seats } from '../../../core/music/seat.ts';
import type { MarkState, ShownMark } from '../../../core/engraving/marks/placeMarks.ts';
import { shareOfNote } from '../../../core/music/shareOfNote.ts';
import type { PartIndex } from '../../library/partIndex.ts';

type Standing = Mark & { seats: Seats };

function shown({ note, value }: Mark, seats: Seats, state: MarkState, index: PartIndex, rubs?: MarkValue): ShownMark[] {
  const placed = index.notes.get(note);
  if (!placed) return [];
  const after = value.kind === 'change' || value.kind === 'none' ? value.after : undefined;
  const share = after === undefined ? 0 : shareOfNote(after, placed.note);
  return [{ note, value, seats, state, ...(share > 0 ? { share } : {}), ...(rubs ? { rubs } : {}) }];
}

/** Marks a slip or a draft would write, in pencil; a mark that rubs out shows, struck, what it rubs out. */
export function pencilled(marks: readonly Mark[], seats: Seats, standing: readonly Standing[], index: PartIndex, state: MarkState = 'proposed'): ShownMark[] {
  return marks.flatMap((mark) => {
    const { value } = mark;
    const rubs = value.kind === 'none' ? standing.find((other) => other.note === mark.note && excludes(other.value, value))?.value : undefined;
    return shown(mark, mark.seats ?? seats, state, index, rubs);
  });
}

/** What stands in ink, for the whole section or as one seat plays it. A rubbed-out print leaves nothing to draw. */
export function inked(standing: readonly Standing[], seat: SeatId | 'all', index: PartIndex): ShownMark[] {
  return standing.filter(({ seats, value }) => value.kind !== 'none' && (seat === 'all' || isFor(seats, seat))).flatMap((mark) => shown(mark, mark.seats, 'adopted', index));
}

/** What was set aside, taken back or replaced: readable for ever, drawn when the history is on. */
export function gone({ proposals, ink }: AgreementState, index: PartIndex): ShownMark[] {
  const aside = Object.values(proposals).filter(({ status }) => status === 'setAside' || status === 'withdrawn');
  return [
    ...aside.flatMap(({ marks, seats }) => marks.flatMap((mark) => shown(mark, mark.seats ?? seats, 'aside', index))),
    ...ink.filter(({ superseded }) => superseded).flatMap(({ mark, seats }) => shown(mark, seats, 'aside', index)),
  ].filter(({ value }) => value.kind !== 'none');
}
