import type { Context } from '../context.ts';
import type { Slots } from '../slots.ts';
import type { Step } from '../step.ts';

const clip = (value: number, limit: number): number => (value === 99 ? 99 : Math.max(-limit, Math.min(limit, value)));

/** Shift and crossing within a figure of four notes. Templates 110-119. */
export function figureFeatures(slots: Slots, before: Context, c: Context, t: Step): void {
  const dp3 = clip(t.dp, 3);
  slots.add(110, clip(t.dp, 2), clip(c.d0, 7), clip(c.d1, 7), clip(c.d2, 7));
  slots.add(111, t.moved, t.sameString, clip(c.d0, 7), c.d1);
  slots.add(112, t.ds, c.d0, c.d1, c.d2);
  slots.add(113, t.ds, c.beat, before.db, t.open);
  slots.add(114, dp3, c.steps, t.fA, t.fB);
}
