import { leftFrom } from './cheapestPair.ts';
import type { Model } from './model.ts';
import { sumOverWindows } from './windows.ts';

/** A player's changes, the latest first: nodes. */
interface Trail {
  node: number;
  before?: Trail;
}

/** Everybody's last change so far (node, oldest first) and whether each made an odd number: players who are alike need no names. */
interface State {
  trails: readonly Trail[];
  odd: readonly number[];
  /** Points so far. */
  points: number;
}

interface Queue {
  /** First node at which another change may follow one at each node. */
  next: Int32Array;
  /** Last node each node's stroke reaches. */
  until: Int32Array;
  /** What one player still pays at least from each node on, prices included. */
  left: Float64Array;
  /** What the prices give back at most after each node: those of the windows still open. */
  givenBack: Float64Array;
}

function queueOf(model: Model, prices: Float64Array): Queue {
  const { strokes, change } = model.players[0]!;
  const { crowd } = model;
  const over = sumOverWindows(crowd, prices);
  const at = change.map((own, i) => own + over[i]!);
  const { nodes, reach } = strokes;
  const next = new Int32Array(nodes).fill(nodes - 1);
  const until = new Int32Array(nodes);
  for (let node = 0, t = 1; node < nodes - 1; node++) {
    t = Math.max(t, node + 1);
    while (node > 0 && t < nodes - 1 && crowd.from[t - 1]! <= crowd.to[node - 1]!) t++;
    next[node] = t;
  }
  for (let node = 0; node < nodes; node++) for (let to = node + 1; to < nodes && reach[to]! <= node; to++) until[node] = to;
  const givenBack = new Float64Array(nodes);
  prices.forEach((price, w) => {
    for (let node = 0; node <= crowd.last[w]!; node++) givenBack[node]! += price;
  });
  return { next, until, left: leftFrom({ strokes, at }), givenBack };
}

/** Whether everybody still finds a place before their bow ends, the one who waited longest first, from node `from` on. */
function isInTime({ next, until }: Queue, trails: readonly Trail[], from: number): boolean {
  const end = next.length - 1;
  let place = from;
  for (const { node } of trails) {
    if (until[node] === end) return true;
    if (place > until[node]!) return false;
    place = next[place]!;
  }
  return true;
}

const keyOf = ({ trails, odd }: State): string => `${trails.map(({ node }) => node).join()}|${odd.join('')}`;

/** Whether one change at a time is all a window takes and the players differ in nothing but their seat: only then can a queue be searched. */
export function isQueue(model: Model): boolean {
  const [first] = model.players;
  const [named] = model.problem.players;
  return model.allowed === 1 && model.players.every(({ change }, p) => {
    const { limit, comfortable } = model.problem.players[p]!;
    return limit === named!.limit && comfortable === named!.comfortable && change.every((points, i) => points === first!.change[i]);
  });
}

/** A way for each player, usable instants, and the points of all; Infinity and no ways where there is none. */
export interface Queued {
  ways: readonly (readonly number[])[];
  cost: number;
}

const wayOf = (trail: Trail): number[] => (trail.before ? [...wayOf(trail.before), trail.node - 1] : []);

/**
 * The cheapest ways where one at a time may change and all players are alike: every order of changes, instant by instant, players without names. In a crowded
 * passage each waits nearly as long as a bow lasts, so few orders are possible and all can be looked at. Desks, neighbours and evenness are left out.
 * @param prices of the crowd windows, 0 or more, from the bound: they tell early which orders come out too dear; they do not change the answer
 * @param below only ways that cost less are looked for
 * @param most states at one instant at most
 * @returns undefined where there are too many states. With `below` Infinity and no ways the passage cannot be played at all. Oracle: all plans of small problems.
 */
export function queued(model: Model, prices: Float64Array, below: number, most: number): Queued | undefined {
  const queue = queueOf(model, prices);
  const { left, next, until, givenBack } = queue;
  const { strokes, change } = model.players[0]!;
  const end = strokes.nodes - 1;
  const bit = strokes.end[0] === strokes.end[1] ? 0 : 1;
  const atLeast = ({ trails, odd, points }: State, t: number) => trails.reduce((sum, { node }, p) => sum + left[2 * node + odd[p]!]!, points - givenBack[t]!);
  const free = ({ trails }: State) => next[trails[trails.length - 1]!.node]!;
  let states: State[] = [{ trails: model.players.map(() => ({ node: 0 })), odd: model.players.map(() => 0), points: 0 }];
  for (let t = 1; t < end; t++) {
    const after = new Map<string, State>();
    const add = (state: State) => {
      if (!isInTime(queue, state.trails, Math.max(t + 1, free(state))) || atLeast(state, t) >= below - 1e-6) return;
      const key = keyOf(state);
      const known = after.get(key);
      if (!known || state.points < known.points) after.set(key, state);
    };
    for (const state of states) {
      const { trails, odd } = state;
      add(state);
      if (free(state) > t) continue;
      trails.forEach((trail, p) => {
        if (until[trail.node]! < t || (p > 0 && trail.node === trails[p - 1]!.node && odd[p] === odd[p - 1])) return;
        const points = state.points + strokes.cost[t * strokes.nodes + trail.node]! + change[t - 1]!;
        add({ trails: [...trails.slice(0, p), ...trails.slice(p + 1), { node: t, before: trail }], odd: [...odd.slice(0, p), ...odd.slice(p + 1), odd[p]! ^ bit], points });
      });
    }
    states = [...after.values()];
    if (states.length > most) return undefined;
  }
  let best: Queued = { ways: [], cost: Infinity };
  for (const state of states) {
    const cost = state.trails.reduce((sum, { node }, p) => sum + strokes.cost[end * strokes.nodes + node]! + strokes.end[state.odd[p] as 0 | 1], state.points);
    if (cost < Math.min(best.cost, below - 1e-6)) best = { ways: state.trails.map(wayOf), cost };
  }
  return best;
}
