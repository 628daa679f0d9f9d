import { EVENNESS, evenShare, STRETCH } from './costs/evenness.ts';
import { areNeighbours, NEIGHBOUR } from './costs/neighbour.ts';
import { costOfChange, type PerChange } from './costs/perChange.ts';
import { strokeLengthCost } from './costs/strokeLength.ts';
import type { StaggerProblem, StaggerSettings } from './problem.ts';
import { SAME_TIME } from './problem.ts';
import type { Windows } from './windows.ts';
import { closerThan, windowsOf } from './windows.ts';

/** Points by kind of cost; they add up to the cost of the plan. */
export interface Terms extends PerChange {
  strokeLength: number;
  neighbours: number;
  evenness: number;
}

function windowsEntered(windows: Windows, changes: readonly number[]): Set<number> {
  const entered = new Set<number>();
  for (const instant of changes) for (let w = windows.from[instant]!; w <= windows.to[instant]!; w++) entered.add(w);
  return entered;
}

/**
 * What a plan costs, term by term, in points. Says nothing of rules.
 * @param plan each player's instants of change in the problem's order, rising
 * Example: a plan without changes costs only `strokeLength`.
 */
export function termsOf(problem: StaggerProblem, settings: StaggerSettings, plan: readonly (readonly number[])[]): Terms {
  const { instants, players, duration } = problem;
  const terms: Terms = { changes: 0, barline: 0, beat: 0, peak: 0, unhidden: 0, partnerShift: 0, strokeLength: 0, neighbours: 0, evenness: 0 };
  const usable = instants.flatMap(({ time }, i) => (time > SAME_TIME && time < duration - SAME_TIME ? [i] : []));
  const windows = windowsOf(closerThan(usable.map((i) => instants[i]!.time), settings.crowdWindow), usable.length);
  const entered = plan.map((changes) => windowsEntered(windows, changes.map((i) => usable.indexOf(i))));
  const perStretch = new Map<number, number>();
  players.forEach((player, p) => {
    const partner = players.find((other) => other !== player && other.desk === player.desk);
    let from = 0;
    for (const index of plan[p]!) {
      const instant = instants[index]!;
      const cost = costOfChange(instant, index, player, partner);
      for (const kind of Object.keys(cost) as (keyof PerChange)[]) terms[kind] += cost[kind];
      terms.strokeLength += strokeLengthCost(instant.time - from, player.comfortable);
      from = instant.time;
      const stretch = Math.floor(instant.time / STRETCH + SAME_TIME);
      perStretch.set(stretch, (perStretch.get(stretch) ?? 0) + 1);
    }
    terms.strokeLength += strokeLengthCost(duration - from, player.comfortable);
    players.forEach((other, q) => {
      if (q > p && areNeighbours(player, other)) terms.neighbours += NEIGHBOUR * [...entered[p]!].filter((w) => entered[q]!.has(w)).length;
    });
  });
  const share = evenShare(players);
  for (const count of perStretch.values()) terms.evenness += EVENNESS * Math.max(0, count - share);
  return terms;
}
