import { costsToEnd, type CostsToEnd } from './costsToEnd.ts';
import { type Lattice, type Path, pathCost } from './lattice.ts';

/** A way that leaves a path at a layer, takes states of its own and comes back to it. */
interface Detour {
  from: number;
  states: number[];
}

/** Cheapest costs from the start to every state, its own included, and the state before it on the way. */
function costsFromStart({ states, steps }: Lattice): { costs: Float64Array[]; back: Int16Array[] } {
  const costs = [Float64Array.from(states[0]!)];
  const back = [new Int16Array(states[0]!.length).fill(-1)];
  for (let i = 1; i < states.length; i += 1) {
    const size = states[i]!.length;
    const before = costs[i - 1]!;
    const here = new Float64Array(size).fill(Infinity);
    const from = new Int16Array(size).fill(-1);
    for (let a = 0; a < before.length; a += 1) {
      if (before[a] === Infinity) continue;
      for (let b = 0; b < size; b += 1) {
        const value = before[a]! + steps[i]![a * size + b]!;
        if (value < here[b]!) [here[b], from[b]] = [value, a];
      }
    }
    for (let b = 0; b < size; b += 1) here[b]! += states[i]![b]!;
    costs.push(here);
    back.push(from);
  }
  return { costs, back };
}

/**
 * Ways beside `first`, the cheapest path: for every state that is not of its class the cheapest path through it, cheapest first, each kept only where its
 * classes differ in `apart` layers or more from those of `first` and of every way kept before; at most `count`. Ties in order of layers and states.
 * O(layers x states^2), and for each way looked at the layers it leaves `first` for. Oracle: brute force over all paths.
 */
export function detours(lattice: Lattice, first: Path, classOf: (layer: number, state: number) => number, count: number, apart: number, toEnd: CostsToEnd = costsToEnd(lattice)): Path[] {
  const n = lattice.states.length;
  if (n === 0 || count < 1) return [];
  const { costs, back } = costsFromStart(lattice);
  const classes = first.states.map((state, i) => classOf(i, state));
  const kept: Detour[] = [];
  for (const { layer, state } of candidates()) {
    const detour = walk(layer, state);
    if (differing(detour) < apart || kept.some((other) => differing(detour, other) < apart)) continue;
    kept.push(detour);
    if (kept.length === count) break;
  }
  return kept.map(({ from, states }) => {
    const whole = [...first.states.slice(0, from), ...states, ...first.states.slice(from + states.length)];
    return { states: whole, cost: pathCost(lattice, whole) };
  });

  function candidates(): { layer: number; state: number; cost: number }[] {
    const found: { layer: number; state: number; cost: number }[] = [];
    let beyond = toEnd.base.reduce((sum, base) => sum + base, 0);
    for (let i = 0; i < n; i += 1) {
      beyond -= i === 0 ? 0 : toEnd.base[i - 1]!;
      costs[i]!.forEach((cost, state) => {
        const whole = cost + toEnd.beyond[i]![state]! + beyond;
        if (whole < Infinity && classOf(i, state) !== classes[i]) found.push({ layer: i, state, cost: whole });
      });
    }
    return found.sort((a, b) => a.cost - b.cost);
  }

  function walk(layer: number, state: number): Detour {
    const backwards: number[] = [];
    for (let i = layer, at = back[i]![state]!; i > 0 && at !== first.states[i - 1]; i -= 1, at = back[i]![at]!) backwards.push(at);
    const states = [...backwards.reverse(), state];
    for (let i = layer, at = toEnd.next[i]![state]!; i + 1 < n && at !== first.states[i + 1]; i += 1, at = toEnd.next[i]![at]!) states.push(at);
    return { from: layer - backwards.length, states };
  }

  function differing(one: Detour, other: Detour = { from: one.from, states: [] }): number {
    const classAt = ({ from, states }: Detour, i: number): number => (i < from || i >= from + states.length ? classes[i]! : classOf(i, states[i - from]!));
    const differs = (i: number): boolean => classAt(one, i) !== classAt(other, i);
    let different = 0;
    for (let i = one.from; i < one.from + one.states.length; i += 1) if (differs(i)) different += 1;
    for (let i = other.from; i < other.from + other.states.length; i += 1) if ((i < one.from || i >= one.from + one.states.length) && differs(i)) different += 1;
    return different;
  }
}
