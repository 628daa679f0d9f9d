import type { SinceView } from '../../../../core/agreement/wire/overview.ts';
import { deskOf, type SeatId } from '../../../../core/music/seat.ts';

type Change = SinceView['changes'][number];

/** Changes by measure, in the order of the music. */
export function byMeasure(changes: readonly Change[]): { number: string; changes: Change[] }[] {
  const rows = new Map<number, { number: string; changes: Change[] }>();
  for (const change of changes) {
    const row = rows.get(change.measure) ?? { number: change.number, changes: [] };
    row.changes.push(change);
    rows.set(change.measure, row);
  }
  return [...rows.values()];
}

/** What goes to each desk: the changes of its seats. Desks to which nothing goes are left out. */
export function byDesk(changes: readonly Change[], seats: readonly SeatId[]): { desk: number; changes: Change[] }[] {
  const desks = [...new Set(seats.map(deskOf))];
  return desks.flatMap((desk) => {
    const here = seats.filter((seat) => deskOf(seat) === desk);
    const mine = changes.flatMap((change): Change[] => {
      if (change.seats === 'all') return [change];
      const ours = here.filter((seat) => change.seats.includes(seat));
      if (ours.length === 0) return [];
      return [{ ...change, seats: ours.length === here.length ? 'all' : ours }];
    });
    return mine.length ? [{ desk, changes: mine }] : [];
  });
}
