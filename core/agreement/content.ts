import { z } from 'zod';
import { excludes, Mark, type MarkValue } from '../music/mark.ts';
import { Seats, type SeatId } from '../music/seat.ts';
import { exact, fraction } from '../music/time.ts';
import { MeasureOrdinal, Why } from './input.ts';
import { refused } from './refusal.ts';
import type { PartFacts } from './state.ts';

/** What a slip says: a set of marks over a range of measures, for whom, and why. 400 marks: chosen, not measured. */
export const CONTENT = {
  from: MeasureOrdinal,
  to: MeasureOrdinal,
  seats: Seats,
  why: Why,
  marks: z.array(Mark).min(1).max(400),
} as const;
export type Content = { [Field in keyof typeof CONTENT]: z.infer<(typeof CONTENT)[Field]> };

/** One text for one time: "6/4" and "3/2" are the same place. */
function inOneForm(value: MarkValue): MarkValue {
  const after = (value.kind === 'change' || value.kind === 'none') && value.after !== undefined ? exact(fraction(value.after)) : undefined;
  return after === undefined ? value : ({ ...value, after } as MarkValue);
}

function seatsInOrder(seats: Seats, facts: PartFacts): Seats {
  return seats === 'all' ? 'all' : facts.seats.filter((seat) => seats.includes(seat));
}

function overlap(a: Seats, b: Seats): boolean {
  return a === 'all' || b === 'all' || a.some((seat) => b.includes(seat));
}

function unknownSeat(seats: Seats | undefined, facts: PartFacts): SeatId | undefined {
  return seats === undefined || seats === 'all' ? undefined : seats.find((seat) => !facts.seats.includes(seat));
}

function refusalOf(content: Content, facts: PartFacts): ReturnType<typeof refused> | null {
  const { from, to } = content;
  if (to > facts.measures) return refused('UNKNOWN_MEASURE', { measure: to });
  if (from > to) return refused('UNKNOWN_MEASURE', { measure: from });
  for (const seats of [content.seats, ...content.marks.map((mark) => mark.seats)]) {
    const seat = unknownSeat(seats, facts);
    if (seat !== undefined) return refused('UNKNOWN_SEAT', { seat });
  }
  for (const mark of content.marks) {
    const measure = facts.notes.get(mark.note);
    if (measure === undefined || measure < from || measure > to) return refused('UNKNOWN_NOTE', { from, to });
    const stray = Array.isArray(mark.seats) && content.seats !== 'all' ? mark.seats.find((seat) => !content.seats.includes(seat)) : undefined;
    if (stray !== undefined) {
      return refused('BAD_INPUT', { detail: `a mark in measure ${measure} is for seat ${stray}, but the proposal is not. Add the seat to the proposal or take it off the mark.` });
    }
  }
  return null;
}

function slotTwice(marks: readonly Mark[], seats: Seats): Mark | undefined {
  const byNote = new Map<string, Mark[]>();
  for (const mark of marks) {
    const before = byNote.get(mark.note) ?? [];
    if (before.some((other) => excludes(mark.value, other.value) && overlap(mark.seats ?? seats, other.seats ?? seats))) return mark;
    byNote.set(mark.note, [...before, mark]);
  }
  return undefined;
}

/**
 * The content of a proposal in one form (times reduced, seats front to back, "all" on a mark left out), or why it cannot stand:
 * UNKNOWN_MEASURE, UNKNOWN_SEAT, UNKNOWN_NOTE (no such note between `from` and `to`), SAME_SLOT_TWICE, BAD_INPUT (a mark for a seat
 * outside the proposal). Invariant: content in one form comes back equal.
 * Example: `checkContent({ from: 1, to: 1, seats: 'all', why: 'In one bow', marks }, facts)`.
 */
export function checkContent(content: Content, facts: PartFacts): { ok: true; content: Content } | ReturnType<typeof refused> {
  const refusal = refusalOf(content, facts);
  if (refusal) return refusal;
  const marks = content.marks.map(({ note, value, seats }) => ({
    note,
    value: inOneForm(value),
    ...(seats === undefined || seats === 'all' ? {} : { seats: seatsInOrder(seats, facts) }),
  }));
  const twice = slotTwice(marks, content.seats);
  if (twice) return refused('SAME_SLOT_TWICE', { measure: facts.notes.get(twice.note)! });
  return { ok: true, content: { from: content.from, to: content.to, why: content.why, seats: seatsInOrder(content.seats, facts), marks } };
}
