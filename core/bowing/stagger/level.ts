import type { Seconds } from '../../music/seconds.ts';
import { bowChangeAudibility, levelDip } from '../dip.ts';
import type { StaggerProblem } from './problem.ts';

/** Seconds between two points of the curve: a third of the scatter of one change, so that no dip falls between two of them; chosen, not measured. */
const EVERY: Seconds = 0.01;

export interface PlanLevel {
  /** Decibels below the full level at the worst moment, 0 or more. */
  worst: number;
  /** Where the level bends: seconds from the start of the passage and decibels below the full level, in order of time. */
  curve: { time: Seconds; dip: number }[];
}

/**
 * The predicted level of a section while its players change bow (see ../dip.ts): points every 0.01 s near the changes, none where nothing happens.
 * @param changes seconds from the start, of every change of every player; `players` 1 or more; `duration` seconds
 * Example: one of twelve changing at 2 s of 4: 0.14 dB at worst, at 2 s.
 */
export function levelThrough(changes: readonly Seconds[], players: number, duration: Seconds): PlanLevel {
  const times = Array.from({ length: Math.floor(duration / EVERY) + 1 }, (_, k) => k * EVERY);
  const level = levelDip(changes, players, times);
  const bends = (k: number) => k === 0 || k === times.length - 1 || [k - 1, k, k + 1].some((near) => level[near]! > 0.001);
  return { worst: bowChangeAudibility(changes, players).dL, curve: times.flatMap((time, k) => (bends(k) ? [{ time, dip: level[k]! }] : [])) };
}

/**
 * The predicted level of the section through a planned passage.
 * @param plan each player's instants of change
 * Example: twelve players who change at different moments: about 0.14 dB at worst.
 */
export function planLevel({ instants, players, duration }: StaggerProblem, plan: readonly (readonly number[])[]): PlanLevel {
  return levelThrough(plan.flat().map((i) => instants[i]!.time), players.length, duration);
}
