import type { Instant, StaggerPlayer } from '../problem.ts';

/**
 * Unit of every cost: the point. Ten points is what one avoidable bow change is worth; all terms are whole points, so a proved lower
 * bound can be rounded up. The weights are chosen, not measured; their order is common practice.
 */
export const CHANGE = 10;
/** A change on a barline is the one everybody hears. */
export const BARLINE = 12;
export const BEAT = 6;
/** At the peak of the passage (weight 1); in proportion below. */
export const PEAK = 20;
/** A change that this player's own shift does not hide. */
export const UNHIDDEN = 4;
/** More than barline, beat and peak together: the desk would lose both players at once. */
export const PARTNER_SHIFT = 50;

export interface PerChange {
  changes: number;
  barline: number;
  beat: number;
  peak: number;
  unhidden: number;
  partnerShift: number;
}

/**
 * What one change costs by itself, in points.
 * @param index the instant's index, as `shifts` counts them
 * @returns whole points, 0 or more each
 * Example: on a beat, away from every shift, weight 0, for a player who shifts elsewhere: 10 + 6 + 4.
 */
export function costOfChange(instant: Instant, index: number, player: StaggerPlayer, partner: StaggerPlayer | undefined): PerChange {
  return {
    changes: CHANGE,
    barline: instant.onBarline ? BARLINE : 0,
    beat: instant.onBeat ? BEAT : 0,
    peak: Math.round(PEAK * instant.weight),
    unhidden: player.shifts.length > 0 && !player.shifts.includes(index) ? UNHIDDEN : 0,
    partnerShift: partner?.shifts.includes(index) ? PARTNER_SHIFT : 0,
  };
}
