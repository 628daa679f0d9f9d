import { z } from 'zod';

/**
 * A seat: desk number from the front and place at the desk, o outside (audience side) or i inside.
 * Source: trade practice, outside = odd chair, inside = even chair. Example: "3i" is desk 3, inside.
 */
export const SeatId = z.string().regex(/^[1-9][0-9]?[oi]$/, 'A seat is a desk number and o or i, like "3i".');
export type SeatId = z.infer<typeof SeatId>;

/** "all" of the section, or the named seats. */
export const Seats = z.union([z.literal('all'), z.array(SeatId).min(1).max(40)]);
export type Seats = z.infer<typeof Seats>;

/** Desk number of a seat. Example: `deskOf("3i")` is 3. */
export function deskOf(seat: SeatId): number {
  return Number(seat.slice(0, -1));
}

/** True for the outside seat of a desk. */
export function isOutside(seat: SeatId): boolean {
  return seat.endsWith('o');
}

/** Whether only inside players are meant, whose own marks stand below the staff. Example: of ["1i", "2i"] true, of ["1o", "1i"] and of everybody false. */
export function isInsideAlone(seats: Seats): boolean {
  return seats !== 'all' && !seats.some(isOutside);
}

/** The other seat of the same desk. Example: `partnerOf("3i")` is "3o". */
export function partnerOf(seat: SeatId): SeatId {
  return `${deskOf(seat)}${isOutside(seat) ? 'i' : 'o'}`;
}

/** All seats of a section of `players`, front to back, outside before inside; an odd last desk is single. Example: `seatsFor(3)` is ["1o","1i","2o"]. */
export function seatsFor(players: number): SeatId[] {
  return Array.from({ length: players }, (_, i) => `${Math.floor(i / 2) + 1}${i % 2 ? 'i' : 'o'}`);
}

/** True when marks meant for `seats` are on the part of `seat`. */
export function isFor(seats: Seats, seat: SeatId): boolean {
  return seats === 'all' || seats.includes(seat);
}
