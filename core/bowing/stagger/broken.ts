import { turned } from '../strokes.ts';
import type { Direction, StaggerPlayer, StaggerProblem, StaggerSettings } from './problem.ts';
import { crowdAllowed, SAME_TIME } from './problem.ts';

export type StaggerRule = 'end' | 'limit' | 'partners' | 'crowd';

/** A hard rule a plan does not hold. */
export interface Broken {
  rule: StaggerRule;
  players: readonly string[];
  /** Seconds from the start of the passage. */
  time: number;
  /** By how much: seconds for limit and partners, players for crowd, 1 for end. */
  by: number;
  /** What happened, in a sentence. */
  text: string;
}

const seconds = (value: number) => `${Number(value.toFixed(2))} s`;

/** Directions of the strokes around so many changes. Example: `directionsOf('down', 2)` is down, up, down. */
export function directionsOf(start: Direction, changes: number): Direction[] {
  return Array.from({ length: changes + 1 }, (_, k) => (k % 2 === 0 ? start : turned(start)));
}

function alone(problem: StaggerProblem, player: StaggerPlayer, times: readonly number[]): Broken[] {
  const broken: Broken[] = [];
  const ends = [...times, problem.duration];
  ends.forEach((time, k) => {
    const from = k === 0 ? 0 : ends[k - 1]!;
    const over = time - from - player.limit;
    if (over > SAME_TIME) broken.push({ rule: 'limit', players: [player.id], time: from, by: over, text: `${player.id} would need one bow for ${seconds(time - from)} from ${seconds(from)} on, ${seconds(over)} longer than it lasts.` });
  });
  const last = directionsOf(problem.start, times.length).at(-1);
  if (problem.end !== null && last !== problem.end) broken.push({ rule: 'end', players: [player.id], time: problem.duration, by: 1, text: `${player.id} would end ${last}-bow instead of ${problem.end}-bow.` });
  return broken;
}

function atOneDesk(problem: StaggerProblem, settings: StaggerSettings, pair: readonly [StaggerPlayer, StaggerPlayer], plans: readonly [readonly number[], readonly number[]]): Broken[] {
  return plans[0].flatMap((i) => plans[1].flatMap((j): Broken[] => {
    const [a, b] = [problem.instants[i]!, problem.instants[j]!];
    const short = settings.partnerApart - Math.abs(a.time - b.time);
    const same = a.subdivision === b.subdivision;
    if (short <= SAME_TIME && !same) return [];
    const how = short > SAME_TIME ? `${seconds(Math.abs(a.time - b.time))} apart, ${seconds(short)} too close` : 'on the same subdivision';
    return [{ rule: 'partners', players: [pair[0].id, pair[1].id], time: Math.min(a.time, b.time), by: Math.max(0, short), text: `${pair[0].id} and ${pair[1].id} share a desk and would change ${how}, at ${seconds(Math.min(a.time, b.time))}.` }];
  }));
}

/**
 * Every hard rule a plan breaks: bow limits, the direction at the end, desk partners, crowding (each window that starts at a change).
 * @param plan each player's instants of change in the problem's order, rising
 * @returns in the order end and limit, partners, crowd; empty where all hold
 */
export function brokenIn(problem: StaggerProblem, settings: StaggerSettings, plan: readonly (readonly number[])[]): Broken[] {
  const { instants, players } = problem;
  const own = players.flatMap((player, p) => alone(problem, player, plan[p]!.map((i) => instants[i]!.time)));
  const desks = players.flatMap((player, p) => players.flatMap((other, q) => (q > p && other.desk === player.desk ? atOneDesk(problem, settings, [player, other], [plan[p]!, plan[q]!]) : [])));
  const allowed = crowdAllowed(players.length, settings.crowdShare);
  const changes = plan.flatMap((list, p) => list.map((i) => ({ time: instants[i]!.time, id: players[p]!.id }))).sort((a, b) => a.time - b.time);
  const starts = [...new Set(changes.map(({ time }) => time))];
  const crowds = starts.flatMap((start): Broken[] => {
    const here = changes.filter(({ time }) => time >= start && time < start + settings.crowdWindow - SAME_TIME);
    const over = here.length - allowed;
    if (over <= 0) return [];
    return [{ rule: 'crowd', players: here.map(({ id }) => id), time: start, by: over, text: `${here.length} change within ${seconds(settings.crowdWindow)} from ${seconds(start)} on; ${allowed} may.` }];
  });
  return [...own, ...desks, ...crowds];
}
