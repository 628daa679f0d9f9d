import type { MarkInForce } from '../agreement/inForce.ts';
import type { PartFacts } from '../agreement/state.ts';
import { offerFor } from '../matching/editions/offerFor.ts';
import type { Mark } from '../music/mark.ts';
import type { Part } from '../music/part.ts';
import type { SeatId } from '../music/seat.ts';
import { keptMarks, type KeptPart } from './keptSet.ts';

/** Share of the music two parts of other names must have in common to be one. Chosen, not measured. */
const SAME_MUSIC = 0.5;

/** Marks of an earlier season on the notes of a part, and how many found no place. */
export interface PartOffer {
  marks: Mark[];
  left: number;
}

/** The mark for the seats that exist here; null where none of its seats does. A mark for the whole section as it was is for the whole section. */
function forSeatsHere({ note, value, seats }: MarkInForce, was: readonly SeatId[], here: readonly SeatId[]): Mark | null {
  if (seats === 'all' || was.every((seat) => seats.includes(seat))) return { note, value };
  const left = here.filter((seat) => seats.includes(seat));
  return left.length ? { note, value, seats: left } : null;
}

/**
 * The marks of a kept set on the notes of a part, of the same or another edition: from the kept part of its name, else of its music (`offerFor`). What has no certain place here, or only
 * seats that are not here, is left. null where the set has no such part. Invariant: `marks.length + left` is the number of marks that were kept on that part.
 * Example: onto the edition they were kept with, nothing is left.
 */
export function offerOn(kept: readonly KeptPart[], part: Part, facts: PartFacts): PartOffer | null {
  const music = kept.map((one) => ({ part: one.content, marks: keptMarks(one), seats: one.seats }));
  const offer = offerFor({ parts: music }, part);
  const from = offer && music.find((one) => one === offer.from);
  if (!offer || !from || (from.part.name !== part.name && offer.matched < SAME_MUSIC)) return null;
  const marks = offer.kept.flatMap((mark) => forSeatsHere(mark as MarkInForce, from.seats, facts.seats) ?? []);
  return { marks, left: from.marks.length - marks.length };
}
