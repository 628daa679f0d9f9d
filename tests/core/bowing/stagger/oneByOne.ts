import type { StaggerProblem } from '../../../../core/bowing/stagger/problem.ts';

/** Players who can draw the same strokes, without names: when each last changed (seconds, in order) and whether an odd number of times. */
type Waiting = readonly (readonly { since: number; odd: boolean }[])[];

/**
 * Whether a passage could be played where only one player may change in any 0.25 s, found by trying every order of changes, instant by instant. From the wording of
 * the rules and with none of the planner's code. Leaves out that partners keep apart: where it says no, there is no plan; where it says yes, there may be none.
 */
export function canGoOneByOne({ instants, duration, players, start, end }: StaggerProblem): boolean {
  if (players.length >= 16) throw new RangeError('From sixteen players on two may change at once.');
  const times = instants.map(({ time }) => time).filter((time) => time > 1e-9 && time < duration - 1e-9);
  const nodes = [0, ...times, duration];
  const longest = players.map(({ limit }) => Math.max(...nodes.flatMap((from, i) => nodes.slice(i + 1).map((to) => to - from).filter((seconds) => seconds <= limit + 1e-9))));
  const limits = [...new Set(longest)];
  const everybody: Waiting = limits.map((limit) => longest.filter((own) => own === limit).map(() => ({ since: 0, odd: false })));
  const lasts = (waiting: Waiting, until: number) => waiting.every((alike, k) => alike.every(({ since }) => until - since <= limits[k]! + 1e-9));
  let reached = new Map<string, { waiting: Waiting; latest: number }>(lasts(everybody, nodes[1]!) ? [['', { waiting: everybody, latest: -1 }]] : []);
  times.forEach((time, i) => {
    const next = times[i + 1] ?? duration;
    const after: typeof reached = new Map();
    const add = (waiting: Waiting, latest: number) => lasts(waiting, next) && after.set(`${latest} ${JSON.stringify(waiting)}`, { waiting, latest });
    for (const { waiting, latest } of reached.values()) {
      add(waiting, latest);
      if (latest >= 0 && time - latest < 0.25 - 1e-9) continue;
      waiting.forEach((alike, k) => alike.forEach(({ odd }, p) => add(waiting.map((others, j) => (j === k ? [...others.filter((_, q) => q !== p), { since: time, odd: end !== null && !odd }] : others)), time)));
    }
    reached = after;
  });
  const isEnd = (odd: boolean) => odd === (end !== null && end !== start);
  return [...reached.values()].some(({ waiting }) => waiting.every((alike) => alike.every(({ odd }) => isEnd(odd))));
}
