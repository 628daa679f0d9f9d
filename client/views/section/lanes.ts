import type { SeatBow, SectionPassage } from '../../../core/bowing/sectionBows.ts';
import { SAME_TIME } from '../../../core/bowing/stagger/problem.ts';
import { deskOf, isOutside, type SeatId } from '../../../core/music/seat.ts';

export interface Change {
  seat: SeatId;
  second: number;
  bow: SeatBow;
}

/** Every change of bow inside the passage; the first bow of a seat is a beginning, not a change. */
export function changesOf({ seats }: SectionPassage): Change[] {
  return seats.flatMap(({ seat, bows }) => bows.slice(1).map((bow) => ({ seat, second: bow.start, bow }))).sort((a, b) => a.second - b.second);
}

/** Seats by desk, outside first. */
export function desksOf(seats: readonly SeatId[]): { desk: number; outside: SeatId | null; inside: SeatId | null }[] {
  const desks = [...new Set(seats.map(deskOf))].sort((a, b) => a - b);
  const find = (desk: number, outside: boolean) => seats.find((seat) => deskOf(seat) === desk && isOutside(seat) === outside) ?? null;
  return desks.map((desk) => ({ desk, outside: find(desk, true), inside: find(desk, false) }));
}

/** Changes so close that they are heard as one; each with how many fall together; a window of `within` seconds, without its end. */
export function clusters(changes: readonly Change[], within = 0.25): Change[][] {
  const groups: Change[][] = [];
  for (const change of changes) {
    const group = groups.at(-1);
    if (group && change.second - group[0]!.second < within - SAME_TIME) group.push(change);
    else groups.push([change]);
  }
  return groups;
}

/** The two changes of a desk's partners that lie closest, or null where one of them never changes. */
export function closest(changes: readonly Change[], desk: number): { apart: number; second: number } | null {
  const here = changes.filter(({ seat }) => deskOf(seat) === desk);
  let best: { apart: number; second: number } | null = null;
  for (const a of here) {
    for (const b of here) {
      if (!isOutside(a.seat) || isOutside(b.seat)) continue;
      const apart = Math.abs(a.second - b.second);
      if (!best || apart < best.apart) best = { apart, second: (a.second + b.second) / 2 };
    }
  }
  return best;
}
