import type { Desk } from '../desk.ts';
import { hereIn } from '../findingHere.ts';
import { openRanges, type OpenRange } from '../openMeasures.ts';

/** The open measures before and after the one that is open, or else in hand. */
export function openBeside(desk: Desk): { before: OpenRange | undefined; after: OpenRange | undefined } {
  const here = desk.caret.open ?? hereIn(desk);
  const ranges = openRanges(desk.state);
  return { before: ranges.findLast(({ from }) => from < here), after: ranges.find(({ from }) => from > here) };
}

/** My own seat's part with nothing hanging under it; from there back to the whole section's. */
export function myPart({ caret, view, me, move }: Desk): void {
  const mine = view.section?.seats.find(({ person }) => person?.id === me.id)?.seat ?? 'all';
  if (caret.open === null && caret.seat === mine) return move({ type: 'seat', seat: 'all' });
  move({ type: 'close' });
  move({ type: 'seat', seat: mine });
}
