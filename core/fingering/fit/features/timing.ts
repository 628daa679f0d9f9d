import type { Context } from '../context.ts';
import type { Slots } from '../slots.ts';
import type { Step } from '../step.ts';

/** Where the music lets the hand move: beat, phrase, tempo, long notes, what comes next. Templates 80-99. */
export function timingFeatures(slots: Slots, before: Context, c: Context, t: Step): void {
  slots.add(80, t.moved, c.beat, t.sameString);
  slots.add(81, t.moved, c.beat, t.fA, t.fB);
  slots.add(82, Math.max(-3, Math.min(3, t.dp)), c.d1, t.ds);
  slots.add(83, t.moved, c.phraseStart, t.sameString);
  slots.add(84, t.moved, c.tempo, t.sameString);
  slots.add(85, t.moved, before.relative, c.relative, t.open);
  slots.add(86, t.ds, c.tempo, t.open);
  slots.add(87, t.moved, before.db, c.db, c.beat);
  slots.add(88, t.moved, c.d2, c.d1, t.up);
  slots.add(89, t.moved, before.extreme, c.extreme, t.up);
}
