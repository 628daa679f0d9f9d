import type { Note } from './part.ts';
import { quarters, type ExactTime } from './time.ts';

/** Where in its note a bow change `after` quarters lies, from 0 (as it begins) to 1. Example: after 1 in a half note is 0.5. */
export function shareOfNote(after: ExactTime, { duration }: Pick<Note, 'duration'>): number {
  const whole = quarters(duration);
  return whole > 0 ? Math.min(1, quarters(after) / whole) : 0;
}
