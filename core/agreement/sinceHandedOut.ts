import { placesOf } from './facts.ts';
import type { MarkValue } from '../music/mark.ts';
import type { SeatId, Seats } from '../music/seat.ts';
import { canonical } from './canonical.ts';
import { inForce, marksFor } from './inForce.ts';
import { stoodAt } from './revisions.ts';
import type { AgreementState, PartFacts } from './state.ts';

/** What has become of one note on the parts of some seats since they were handed out. */
export interface LateChange {
  /** Ordinal, from 1. */
  measure: number;
  note: string;
  seats: Seats;
  /** On the printed part and no longer in force. */
  gone: MarkValue[];
  /** In force and not on the printed part. */
  fresh: MarkValue[];
}

/** Where a section has no seats yet, everybody plays from a part like this one's. */
const ANYBODY: readonly SeatId[] = ['1o'];

function valuesByNote(state: AgreementState, seat: SeatId, seats: readonly SeatId[], { notes }: PartFacts): Map<string, MarkValue[]> {
  const byNote = new Map<string, MarkValue[]>();
  for (const { note, value } of marksFor(seat, inForce(state, seats))) if (notes.has(note)) byNote.set(note, [...(byNote.get(note) ?? []), value]);
  return byNote;
}

const missing = (from: readonly MarkValue[], other: readonly MarkValue[]): MarkValue[] => {
  const there = new Set(other.map(canonical));
  return from.filter((value) => !there.has(canonical(value)));
};

/**
 * What differs between the parts as they were handed out and what is in force now, in the order of the music, seats with the same change
 * together; empty while the part is not on the stands. A mark that was changed and changed back is no change. Notes the part no longer has
 * are left out.
 * Example: finger 2 in place of finger 1 for everybody since is one change with `seats: "all"`, `gone` finger 1 and `fresh` finger 2.
 */
export function sinceHandedOut(state: AgreementState, facts: PartFacts): LateChange[] {
  const { handedOut } = state;
  if (!handedOut) return [];
  const seats = facts.seats.length ? facts.seats : ANYBODY;
  const printed = stoodAt(state, handedOut.seq);
  const found = new Map<string, LateChange & { seats: SeatId[] }>();
  for (const seat of seats) {
    const [before, now] = [valuesByNote(printed, seat, seats, facts), valuesByNote(state, seat, seats, facts)];
    for (const note of new Set([...before.keys(), ...now.keys()])) {
      const [gone, fresh] = [missing(before.get(note) ?? [], now.get(note) ?? []), missing(now.get(note) ?? [], before.get(note) ?? [])];
      if (gone.length + fresh.length === 0) continue;
      const key = canonical([note, gone, fresh]);
      const known = found.get(key);
      if (known) known.seats.push(seat);
      else found.set(key, { measure: facts.notes.get(note)!, note, seats: [seat], gone, fresh });
    }
  }
  const order = placesOf(facts);
  const all = [...found.values()].sort((a, b) => order.get(a.note)! - order.get(b.note)!);
  return all.map((one) => (one.seats.length === seats.length ? { ...one, seats: 'all' } : one));
}

/** Ordinals of the measures in which a seat's part has changed, or anybody's where `seat` is null. Example: `changedMeasures(changes, '3i')` is [12, 40]. */
export function changedMeasures(changes: readonly LateChange[], seat: SeatId | null): number[] {
  const mine = changes.filter(({ seats }) => seat === null || seats === 'all' || seats.includes(seat));
  return [...new Set(mine.map(({ measure }) => measure))].sort((a, b) => a - b);
}
