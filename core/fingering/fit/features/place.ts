import type { Place } from '../../frame.ts';
import type { Context } from '../context.ts';
import type { Slots } from '../slots.ts';

/** How this place suits this note by itself: finger, string and position for the pitch, its length, the intervals beside it. Templates 1-29. */
export function placeFeatures(slots: Slots, c: Context, p: Place): void {
  const { finger: f, string: s, position } = p;
  const open = f === 0 ? 1 : 0;
  const near = Math.min(position, 5);
  slots.add(1, f);
  slots.add(2, s);
  slots.add(3, position);
  slots.add(4, s, position);
  slots.add(5, f, position);
  slots.add(6, f, p.off);
  slots.add(7, p.respelled);
  slots.add(8, p.respelled, f, p.off);
  slots.add(9, c.midi, s);
  slots.add(10, c.midi, s, position, f);
  slots.add(11, c.db, f);
  slots.add(12, c.db, near);
  slots.add(13, c.db, s);
  slots.add(14, c.db, open, c.midi);
  slots.add(15, Math.min(position, 8), f, s);
  slots.add(16, c.chord, s, f);
  slots.add(17, c.chord, Math.min(position, 6));
  slots.add(18, c.d1, f, s);
  slots.add(19, c.d2, f, s);
  slots.add(20, c.d1, c.d2, f);
  slots.add(21, c.d1, near, s);
  slots.add(22, c.d2, near, s);
}
