import type { Happened } from '../record/happened.ts';
import { acknowledged } from './guarantees/acknowledged.ts';
import { allowedAtCommit } from './guarantees/allowedAtCommit.ts';
import { decidedOnce } from './guarantees/decidedOnce.ts';
import { dense } from './guarantees/dense.ts';
import { inOrder } from './guarantees/inOrder.ts';
import { jobsOnce } from './guarantees/jobsOnce.ts';
import { nothingForeign } from './guarantees/nothingForeign.ts';
import { nothingForgotten } from './guarantees/nothingForgotten.ts';
import { oldPages } from './guarantees/oldPages.ts';
import { once } from './guarantees/once.ts';
import { refusedLeavesNothing } from './guarantees/refusedLeavesNothing.ts';
import { sameEverywhere } from './guarantees/sameEverywhere.ts';
import { snapshots } from './guarantees/snapshots.ts';
import { standsUp } from './guarantees/standsUp.ts';
import { tell, type Guarantee, type Violation } from './told.ts';

export const GUARANTEES: readonly Guarantee[] = [acknowledged, once, dense, sameEverywhere, inOrder, snapshots, refusedLeavesNothing, allowedAtCommit, nothingForgotten, oldPages, decidedOnce, nothingForeign, jobsOnce, standsUp];

/** Everything in a recorded history that was promised and did not hold. Pure: the same record, the same answer. */
export function check(history: readonly Happened[]): Violation[] {
  const told = tell(history);
  return GUARANTEES.flatMap(({ id, broken }) => broken(told).map((one) => ({ guarantee: id, ...one })));
}

/** How often each thing happened, for the closing line of a run. */
export function counted(history: readonly Happened[]): { acknowledged: number; rows: number; refused: number; faults: Record<string, number> } {
  const { of, logs } = tell(history);
  const faults: Record<string, number> = {};
  for (const { kind } of of('fault')) faults[kind] = (faults[kind] ?? 0) + 1;
  return { acknowledged: new Set(of('acknowledged').map(({ op }) => op)).size, rows: [...logs.values()].reduce((sum, rows) => sum + rows.length, 0), refused: new Set(of('refused').map(({ op }) => op)).size, faults };
}
