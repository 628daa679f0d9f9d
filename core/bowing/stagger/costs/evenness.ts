import type { StaggerPlayer } from '../problem.ts';

/** Points for each change above a stretch's share; chosen, not measured. */
export const EVENNESS = 5;
/** Seconds of one stretch over which changes are counted; chosen, not measured. */
export const STRETCH = 1;

/**
 * Changes one stretch may hold before evenness costs: what the section would make at everybody's comfortable length, rounded up.
 * @returns 1 or more. Example: eight players of 4 s comfortable: 2 a second.
 */
export function evenShare(players: readonly StaggerPlayer[]): number {
  return Math.max(1, Math.ceil(players.reduce((sum, player) => sum + STRETCH / player.comfortable, 0) - 1e-9));
}
