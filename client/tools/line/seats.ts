import type { Seats } from '../../../core/music/seat.ts';

/** Takes one seat in or out. From "all" a first seat means that seat alone; no seat left, or every seat, is all. Seats stay front to back. */
export function toggleSeat(chosen: Seats, seat: string, all: readonly string[]): Seats {
  if (chosen === 'all') return [seat];
  const next = all.filter((one) => (one === seat ? !chosen.includes(seat) : chosen.includes(one)));
  return next.length === 0 || next.length === all.length ? 'all' : next;
}
