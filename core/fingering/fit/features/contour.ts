import type { Place } from '../../frame.ts';
import type { Context } from '../context.ts';
import type { Slots } from '../slots.ts';

/** How this place suits the shape of the line and the beat. Templates 30-49. */
export function contourFeatures(slots: Slots, c: Context, p: Place): void {
  const { finger: f, string: s } = p;
  const open = f === 0 ? 1 : 0;
  const near = Math.min(p.position, 5);
  slots.add(30, c.extreme, f);
  slots.add(31, c.extreme, near, s);
  slots.add(32, c.extreme, open);
  slots.add(33, c.twoBack, f, s);
  slots.add(34, c.twoBack, near, s);
  slots.add(35, c.twoOn, f, s);
  slots.add(36, c.twoOn, near, s);
  slots.add(37, c.d2, c.d3, f);
  slots.add(38, c.d1, c.d0, f);
  slots.add(39, c.d0, c.d1, c.d2, f);
  slots.add(40, c.d1, c.d2, c.d3, f);
  slots.add(41, c.beat, f);
  slots.add(42, c.beat, near);
  slots.add(43, c.beat, open, c.db);
  slots.add(44, c.beat, s);
  slots.add(45, c.first, f);
}
