import { placesOf } from './facts.ts';
import { slotKey, type MarkValue } from '../music/mark.ts';
import { isFor, type SeatId, type Seats } from '../music/seat.ts';
import { canonical } from './canonical.ts';
import type { MarkInForce } from './inForce.ts';
import type { PartFacts } from './state.ts';

/** What became of one slot of one note, for the seats it became so for. `before` and `after` are null where nothing stood. */
export interface InkChange {
  /** Ordinal, from 1. */
  measure: number;
  note: string;
  kind: 'added' | 'rubbedOut' | 'changed';
  before: MarkValue | null;
  after: MarkValue | null;
  seats: Seats;
}

/** What stands for one seat: slot key and note -> value. */
function onDesk(marks: readonly MarkInForce[], seat: SeatId): Map<string, MarkInForce> {
  return new Map(marks.filter((mark) => isFor(mark.seats, seat)).map((mark) => [`${slotKey(mark.value)} ${mark.note}`, mark]));
}

function kindOf(before: MarkValue | null, after: MarkValue | null): InkChange['kind'] {
  if (before === null) return 'added';
  return after === null ? 'rubbedOut' : 'changed';
}

function together(seats: readonly SeatId[], section: readonly SeatId[]): Seats {
  return seats.length === section.length ? 'all' : [...seats];
}

/**
 * What differs between two sets of marks in force of one part, seat by seat and then put together where seats differ alike. In the order of the music; one note's changes by slot.
 * A mark that came to hold for other seats alone is told for those seats only. Marks on notes `facts` does not have are passed over.
 * Invariants: equal sets differ nowhere; with before and after exchanged, `added` and `rubbedOut` are exchanged too.
 * Example: finger 1 for all against finger 2 for "1o" and finger 1 for the rest is one change, `seats: ['1o']`.
 */
export function difference(before: readonly MarkInForce[], after: readonly MarkInForce[], facts: PartFacts): InkChange[] {
  const seats: readonly SeatId[] = facts.seats.length ? facts.seats : ['1o'];
  const found = new Map<string, { note: string; before: MarkValue | null; after: MarkValue | null; seats: SeatId[] }>();
  for (const seat of seats) {
    const [then, now] = [onDesk(before, seat), onDesk(after, seat)];
    for (const key of new Set([...then.keys(), ...now.keys()])) {
      const [was, is] = [then.get(key)?.value ?? null, now.get(key)?.value ?? null];
      if (canonical(was) === canonical(is)) continue;
      const { note } = (then.get(key) ?? now.get(key))!;
      const alike = canonical([key, was, is]);
      const known = found.get(alike);
      if (known) known.seats.push(seat);
      else found.set(alike, { note, before: was, after: is, seats: [seat] });
    }
  }
  const place = placesOf(facts);
  const changes = [...found.values()].flatMap((one): InkChange[] => {
    const measure = facts.notes.get(one.note);
    return measure === undefined ? [] : [{ measure, note: one.note, kind: kindOf(one.before, one.after), before: one.before, after: one.after, seats: together(one.seats, seats) }];
  });
  const slot = ({ before: was, after: is }: InkChange): string => slotKey((is ?? was)!);
  return changes.sort((a, b) => place.get(a.note)! - place.get(b.note)! || (slot(a) < slot(b) ? -1 : slot(a) > slot(b) ? 1 : 0));
}

/**
 * The measures of changes, in order, each once. Example: `measuresOf(difference(before, after, facts))` is what a change slip shows.
 */
export function measuresOf(changes: readonly InkChange[]): number[] {
  return [...new Set(changes.map(({ measure }) => measure))].sort((a, b) => a - b);
}
