import { z } from 'zod';
import { inForce, marksFor, type MarkInForce } from '../agreement/inForce.ts';
import type { AgreementState } from '../agreement/state.ts';
import { deskOf, isOutside, SeatId } from '../music/seat.ts';
import type { SeatedMark } from './fingerings.ts';

/** Who a copy is for: the section, a desk by its number ("3"), or a seat ("3i"). */
export const Reader = z.union([z.literal('section'), SeatId, z.string().regex(/^[1-9][0-9]?$/)]);
export type Reader = z.infer<typeof Reader>;

/** Which marks are on a copy: the section's, or none, so that it is as clean as the print. */
export const CopyMarks = z.enum(['agreed', 'none']);
export type CopyMarks = z.infer<typeof CopyMarks>;

const isSeat = (reader: Reader): boolean => SeatId.safeParse(reader).success;

/** Seats of a section that read this copy; empty where the section has no such seat or desk. Example: `readersOf('2', seatsFor(3))` is ["2o"]. */
export function readersOf(reader: Reader, section: readonly SeatId[]): SeatId[] {
  if (reader === 'section') return [...section];
  return section.filter((seat) => (isSeat(reader) ? seat === reader : deskOf(seat) === Number(reader)));
}

/** A copy's reader in players' words; "" for the section. Example: `readerWords('3i')` is "Desk 3, inside". */
export function readerWords(reader: Reader): string {
  if (reader === 'section') return '';
  if (!isSeat(reader)) return `Desk ${reader}`;
  return `Desk ${deskOf(reader)}, ${isOutside(reader) ? 'outside' : 'inside'}`;
}

/** One mark that several readers have, said once. */
function joined(marks: readonly MarkInForce[], readers: readonly SeatId[]): SeatedMark[] {
  const same = new Map<string, { mark: MarkInForce; seats: Set<SeatId> }>();
  for (const mark of marks) {
    const key = `${mark.note} ${JSON.stringify(mark.value)}`;
    const known = same.get(key) ?? same.set(key, { mark, seats: new Set() }).get(key)!;
    for (const seat of mark.seats === 'all' ? readers : mark.seats) if (readers.includes(seat)) known.seats.add(seat);
  }
  return [...same.values()].map(({ mark: { note, value }, seats }) => ({ note, value, seats: seats.size === readers.length ? 'all' : [...seats] }));
}

/**
 * The marks on one copy. section: what everybody plays, marks of single seats left out. A desk: what its players play, said for both or for one of them.
 * A seat: that seat's alone, as if for all. `section`: all its seats. Throws nothing; a desk or seat that is not there has the marks for all.
 * Example: a staggered plan leaves on the copy of "3i" only the changes of 3i.
 */
export function marksOnCopy(state: AgreementState, reader: Reader, section: readonly SeatId[]): SeatedMark[] {
  const readers = readersOf(reader, section);
  if (reader === 'section' || !readers.length) return inForce({ ...state, ink: state.ink.filter(({ seats }) => seats === 'all') }, []);
  const marks = inForce(state, section);
  if (readers.length === 1) return marksFor(readers[0]!, marks).map(({ note, value }) => ({ note, value, seats: 'all' }));
  return joined(marks.filter(({ seats }) => seats === 'all' || seats.some((seat) => readers.includes(seat))), readers);
}
