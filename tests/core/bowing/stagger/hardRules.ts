import type { StaggerProblem } from '../../../../core/bowing/stagger/problem.ts';

/**
 * The hard rules written down a second time, straight from their wording and with none of the planner's code: what a plan breaks.
 * Limits and windows at their defaults.
 */
export function brokenRules(problem: StaggerProblem, plan: readonly { changes: readonly number[]; directions: readonly string[] }[]): string[] {
  const broken = new Set<string>();
  const at = (instant: number) => problem.instants[instant]!.time;
  const everything: number[] = [];
  problem.players.forEach((player, p) => {
    const { changes, directions } = plan[p]!;
    const ends = [0, ...changes.map(at), problem.duration];
    for (let k = 1; k < ends.length; k++) {
      if (ends[k]! <= ends[k - 1]!) broken.add('order');
      if (ends[k]! - ends[k - 1]! > player.limit + 1e-6) broken.add('limit');
    }
    if (directions.length !== changes.length + 1 || directions[0] !== problem.start) broken.add('start');
    if (directions.some((direction, k) => k > 0 && direction === directions[k - 1])) broken.add('turn');
    if (problem.end !== null && directions[directions.length - 1] !== problem.end) broken.add('end');
    everything.push(...changes.map(at));
    problem.players.forEach((other, q) => {
      if (q <= p || other.desk !== player.desk) return;
      for (const i of changes) {
        for (const j of plan[q]!.changes) {
          if (Math.abs(at(i) - at(j)) < 0.5 - 1e-6 || problem.instants[i]!.subdivision === problem.instants[j]!.subdivision) broken.add('partners');
        }
      }
    });
  });
  const allowed = Math.max(1, Math.floor(problem.players.length / 8));
  for (const time of everything) if (everything.filter((other) => other > time - 1e-6 && other < time + 0.25 - 1e-6).length > allowed) broken.add('crowd');
  return [...broken].sort();
}
