import type { SeatId } from '../music/seat.ts';

/** What some seats have in front of them at one place. */
export interface SeenBy<T> {
  value: T;
  /** All who see it so. */
  seats: SeatId[];
}

/**
 * What `read` finds for each group of seats, once for each different answer; groups it answers with null are left out.
 * @param read a plain value: two answers are the same when their JSON is
 * Example: a retake for all but 1i, read group by group, gives one answer with every seat but 1i.
 */
export function bySeats<Group extends { seats: readonly SeatId[] }, T>(groups: readonly Group[], read: (group: Group) => T | null): SeenBy<T>[] {
  const found = new Map<string, SeenBy<T>>();
  for (const group of groups) {
    const value = read(group);
    if (value === null) continue;
    const key = JSON.stringify(value);
    const same = found.get(key);
    if (same) same.seats.push(...group.seats);
    else found.set(key, { value, seats: [...group.seats] });
  }
  return [...found.values()];
}
