import type { Millimetres } from '../instruments/instrument.ts';
import type { Seconds } from '../music/seconds.ts';

/** Acceleration of hand and forearm in a shift, m/s^2: from memory, editable. */
const ACCELERATION = 30;

export type Effort = 'easy' | 'work' | 'hard' | 'impossible';

/**
 * The least time a move of the hand needs: a minimum-jerk movement, sqrt(5.77 d / a). Distance 0 or more; result in seconds.
 * The derivation is exact, the acceleration is not measured. Example: 32 mm need 0.078 s.
 */
export function leastTime(distance: Millimetres): Seconds {
  return Math.sqrt((5.77 * distance) / 1000 / ACCELERATION);
}

/**
 * How hard a move is in the time from one onset to the next: up to a quarter of the time easy, half work, all of it hard, more impossible
 * (limits chosen, not measured). Example: 32 mm in 0.1 s is hard.
 */
export function effortOf(distance: Millimetres, available: Seconds): Effort {
  const load = leastTime(distance) / Math.max(available, 1e-6);
  return load <= 0.25 ? 'easy' : load <= 0.5 ? 'work' : load <= 1 ? 'hard' : 'impossible';
}

/** The shortest slide a hand makes cleanly: from memory, editable. */
const SHORTEST_SLIDE: Seconds = 0.045;

/** How long a slide over that travel of the hand lasts when it is clean: the least time of the move, no shorter than a hand can. Example: 32 mm, 0.078 s. */
export function slideSeconds(mm: Millimetres): Seconds {
  return Math.max(leastTime(mm), SHORTEST_SLIDE);
}
