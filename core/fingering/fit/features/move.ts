import type { Context } from '../context.ts';
import type { Slots } from '../slots.ts';
import type { Step } from '../step.ts';

const clip = (value: number, limit: number): number => Math.max(-limit, Math.min(limit, value));

/** Shift, crossing, finger pair: what the hand does from note to note. Templates 60-79. */
export function moveFeatures(slots: Slots, before: Context, c: Context, t: Step): void {
  const dp3 = clip(t.dp, 3);
  slots.add(60, t.dp, t.sameString, c.gap);
  slots.add(61, Math.abs(t.dp), t.open, c.chord);
  slots.add(62, t.ds, c.chord, t.moved);
  slots.add(63, t.ds, t.dp, t.open);
  slots.add(64, t.fA, t.fB, t.ds, dp3);
  slots.add(65, t.fA, t.fB, t.ds, c.d1);
  slots.add(66, before.db, Math.min(4, Math.abs(t.dp)), t.sameString);
  slots.add(67, before.db, t.moved, t.open, t.fA, t.fB);
  slots.add(68, t.pA, t.pB);
  if (c.d1 === 0) slots.add(69, t.moved, t.sameString, t.sameFinger, c.gap);
  if (t.sameFinger === 1 && t.fA > 0 && t.ds !== 0) slots.add(70, clip(c.d1 - 7 * t.ds, 2), t.fA);
  if (t.open === 0) {
    slots.add(71, t.fB - t.fA, t.along, t.moved);
    slots.add(72, t.fA, t.fB, t.along, clip(t.dp, 2));
  }
  if (c.chord === 1) slots.add(73, t.ds, t.fA, t.fB);
}
