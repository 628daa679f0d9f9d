import { deskOf, type SeatId } from '../../../../core/music/seat.ts';
import type { Reader } from '../../../../core/print/copy.ts';

/** Copies of one part: one for everybody, one a desk, one a seat, or the one for a desk or seat named. */
export type Copies = 'section' | 'desks' | 'seats' | Reader;

export const desksOf = (seats: readonly SeatId[]): string[] => [...new Set(seats.map((seat) => String(deskOf(seat))))];

/** Whom the copies of a part are for. Example: 'desks' of three seats is ["1", "2"]. */
export function readersFor(copies: Copies, seats: readonly SeatId[]): Reader[] {
  if (copies === 'desks') return desksOf(seats);
  if (copies === 'seats') return [...seats];
  return [copies];
}
