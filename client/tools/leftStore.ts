import { z } from 'zod';
import { Mark } from '../../core/music/mark.ts';
import { SeatId } from '../../core/music/seat.ts';
import { startCaret, type Caret } from './caret/reducer.ts';
import { startPencil, type Held, type Pencil } from './pencil/reducer.ts';

const Left = z.object({
  at: z.string().nullable(),
  from: z.string().nullable(),
  open: z.number().int().positive().nullable(),
  slip: z.string().nullable(),
  seat: z.union([z.literal('all'), SeatId]),
  held: z.enum(['propose', 'alone', 'ink']),
  draft: z.array(Mark),
  /** How many marks the draft had before each stroke of the pencil that can be taken back. */
  before: z.array(z.number().int().nonnegative()).default([]),
});
/** A stand as somebody went away from it: where the rosin lay, what was open, which pencil was in hand and what it had written. */
export type Left = z.infer<typeof Left>;

const key = (person: string, part: string) => `bowline/left/${person}/${part}`;

/** How this person left the part in this browser; null where that is not known or cannot be read. */
export function readLeft(person: string, part: string): Left | null {
  try {
    return Left.parse(JSON.parse(localStorage.getItem(key(person, part)) ?? 'null'));
  } catch {
    return null;
  }
}

export function keepLeft(person: string, part: string, { at, from, open, slip, seat }: Caret, { held, draft, past }: Pencil): void {
  localStorage.setItem(key(person, part), JSON.stringify({ at, from, open, slip, seat, held, draft: [...draft], before: past.map((sheet) => sheet.draft.length) } satisfies z.input<typeof Left>));
}

/** The caret as it was left, where the address still points to its measure; else at the first note of the measure that is named. `open`: that measure is to stand open, with this slip in hand. */
export function caretAsLeft(left: Left | null, named: number | null, first: (measure: number) => string | null, measureOf: (note: string) => number | undefined, seats: readonly string[], open?: string): Caret {
  const seat = left && (left.seat === 'all' || seats.includes(left.seat)) ? left.seat : 'all';
  if (open !== undefined && named !== null) return { ...startCaret(first(named), seat), open: named, slip: open || null };
  const there = left?.at ? measureOf(left.at) : undefined;
  if (!left || there === undefined || (named !== null && named !== there)) return startCaret(first(named ?? 1), seat);
  const from = left.from !== null && measureOf(left.from) !== undefined ? left.from : left.at;
  return { at: left.at, from, open: left.open, slip: left.slip, seat, reaching: false };
}

/** The pencil as it was left, to be taken back stroke by stroke as before; what it had written on notes that are no more is gone. `pencils`: those this person has, the first of them at first in hand. */
export function pencilAsLeft(left: Left | null, alone: readonly Mark[], measureOf: (note: string) => number | undefined, pencils: readonly Held[]): Pencil {
  const start = { ...startPencil(alone), held: pencils[0]! };
  if (!left) return start;
  const draft = left.draft.filter(({ note }) => measureOf(note) !== undefined);
  // A draft always has the clean sheet before it, so that there is something to take back to.
  const before = [0, ...left.before].filter((length, i, all) => length < draft.length && all.indexOf(length) === i).sort((a, b) => a - b);
  return { ...start, held: pencils.includes(left.held) ? left.held : start.held, draft, past: before.map((length) => ({ draft: draft.slice(0, length), alone })) };
}
