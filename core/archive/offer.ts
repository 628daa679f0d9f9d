import type { MarkInForce } from '../agreement/inForce.ts';
import type { PartFacts } from '../agreement/state.ts';
import { carryMarks } from '../matching/editions/carryMarks.ts';
import type { Mark } from '../music/mark.ts';
import type { Part } from '../music/part.ts';
import type { SeatId } from '../music/seat.ts';
import { musicPrints, shareOf } from './alike.ts';
import { keptMarks, type KeptPart } from './keptSet.ts';

/** Share of measures two parts must have in common to be one part under two names. Chosen, not measured. */
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
 * The kept part that a part is: of its name and instrument, else the one of its instrument most of whose measures it has; undefined where there is none.
 * Example: "Violino I" of another edition finds the "Violin I" that was kept.
 */
export function keptFor(part: Part, kept: readonly KeptPart[]): KeptPart | undefined {
  const alike = kept.filter(({ content }) => content.instrument === part.instrument);
  const named = alike.find(({ content }) => content.name === part.name);
  if (named) return named;
  const prints = musicPrints(part);
  const shares = alike.map((one) => ({ one, share: shareOf(prints, musicPrints(one.content)) })).sort((a, b) => b.share - a.share);
  return shares[0] && shares[0].share >= SAME_MUSIC ? shares[0].one : undefined;
}

/**
 * The marks of a kept part on the notes of another edition, where its music is the same; what has no such place, or only seats that are not here, is left.
 * Invariant: `marks.length + left` is the number of marks kept. Example: onto the edition they were kept with, nothing is left.
 */
export function offerOn(kept: KeptPart, part: Part, facts: PartFacts): PartOffer {
  const stood = keptMarks(kept);
  const marks = carryMarks(kept.content, part, stood).kept.flatMap((mark) => forSeatsHere(mark as MarkInForce, kept.seats, facts.seats) ?? []);
  return { marks, left: stood.length - marks.length };
}
