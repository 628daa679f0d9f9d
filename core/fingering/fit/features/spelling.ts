import type { Context } from '../context.ts';
import type { Slots } from '../slots.ts';
import type { Step } from '../step.ts';

/** The fingers against the letters of the interval and the scale. Templates 100-109. */
export function spellingFeatures(slots: Slots, before: Context, c: Context, t: Step): void {
  slots.add(100, c.steps, t.fA, t.fB, t.ds);
  slots.add(101, c.steps, c.d1, t.fB - t.fA, t.ds, t.moved);
  slots.add(102, c.d1, c.chromatic, before.chromatic, t.fA, t.fB);
  slots.add(103, c.steps, Math.max(-3, Math.min(3, t.dp)), t.ds);
}
