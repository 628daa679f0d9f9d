import { excludes, type Mark } from '../music/mark.ts';
import { isFor, type SeatId, type Seats } from '../music/seat.ts';
import { inkInto, type Inking } from './ink.ts';
import type { AgreementState, PartFacts, Stamp, StandingMark } from './state.ts';

/** A mark with the seats that play it said outright. */
export type MarkInForce = Mark & { seats: Seats };

function without(seats: Seats, taken: Seats, section: readonly SeatId[]): Seats | null {
  if (taken === 'all') return null;
  const left = (seats === 'all' ? section : seats).filter((seat) => !taken.includes(seat));
  return left.length ? left : null;
}

function resolve(ink: readonly StandingMark[], section: readonly SeatId[]): MarkInForce[] {
  const standing = ink.filter((one) => !one.superseded);
  const byNote = new Map<string, StandingMark[]>();
  for (const one of standing) byNote.set(one.mark.note, [...(byNote.get(one.mark.note) ?? []), one]);
  return standing.flatMap((one) => {
    const onNote = byNote.get(one.mark.note)!;
    let seats: Seats | null = one.seats;
    for (const later of onNote.slice(onNote.indexOf(one) + 1)) {
      const touched: boolean = seats !== null && excludes(later.mark.value, one.mark.value) && (seats === 'all' || later.seats === 'all' || seats.some((seat) => isFor(later.seats, seat)));
      if (seats !== null && touched) seats = without(seats, later.seats, section);
    }
    return seats === null ? [] : [{ note: one.mark.note, value: one.mark.value, seats }];
  });
}

/**
 * The marks the section stands by now, each with the seats it holds for; of two marks in one slot a seat plays the later one. `section`:
 * all seats, front to back; "all" stays "all" unless some seats have a mark of their own. Marks of kind `none` are among them: they rub out
 * what is printed. Invariant: no seat has two marks in one slot of one note.
 * Example: finger 2 for all and finger 1 for "1o" in a section of three give finger 2 for ["1i", "2o"] and finger 1 for ["1o"].
 */
export function inForce(state: AgreementState, section: readonly SeatId[]): MarkInForce[] {
  return resolve(state.ink, section);
}

const TRYING: Stamp = { by: '', name: '', at: '', seq: 0 };

/**
 * `inForce` as it would be if `inkings` were inked in one after another: a draft under the pencil, say. Changes nothing.
 * Example: `inForceWith(state, [{ proposal: 'draft', why: '', seats: 'all', marks, measures }], section)`.
 */
export function inForceWith(state: AgreementState, inkings: readonly Inking[], section: readonly SeatId[]): MarkInForce[] {
  const ink = [...state.ink];
  for (const inking of inkings) inkInto(ink, inking, TRYING);
  return resolve(ink, section);
}

/**
 * `inForce` as it would be if the named proposals were adopted in that order, whatever has become of them. Marks on notes the part no longer
 * has are left out. Throws on an id that is not in `state`. Example: `withProposals(state, [slip.id], facts)`.
 */
export function withProposals(state: AgreementState, ids: readonly string[], facts: PartFacts): MarkInForce[] {
  const inkings = ids.map((id): Inking => {
    const proposal = state.proposals[id];
    if (!proposal) throw new Error(`No proposal ${id} in this state.`);
    const marks = proposal.marks.filter(({ note }) => facts.notes.has(note));
    return { proposal: id, why: proposal.why, seats: proposal.seats, marks, measures: marks.map(({ note }) => facts.notes.get(note)!) };
  });
  return inForceWith(state, inkings, facts.seats);
}

/** The marks on the part of one seat. Example: `marksFor('3i', inForce(state, section))`. */
export function marksFor(seat: SeatId, marks: readonly MarkInForce[]): MarkInForce[] {
  return marks.filter((mark) => isFor(mark.seats, seat));
}
