import type { Lattice } from './lattice.ts';

/** For every state the cheapest way on from it: `beyond` excludes the state's own cost and is counted from the cheapest of its layer; `next` is the state it leads to. */
export interface CostsToEnd {
  beyond: Float64Array[];
  /** What was subtracted from each layer. */
  base: Float64Array;
  next: Int16Array[];
}

function layerBefore(lattice: Lattice, i: number, beyond: Float64Array): { values: Float64Array; base: number; next: Int16Array } {
  const [here, there] = [lattice.states[i]!.length, lattice.states[i + 1]!.length];
  const values = new Float64Array(here).fill(Infinity);
  const next = new Int16Array(here);
  const steps = lattice.steps[i + 1]!;
  const costs = lattice.states[i + 1]!;
  let base = Infinity;
  for (let a = 0; a < here; a += 1) {
    for (let b = 0; b < there; b += 1) {
      const value = steps[a * there + b]! + costs[b]! + beyond[b]!;
      if (value < values[a]!) {
        values[a] = value;
        next[a] = b;
      }
    }
    if (values[a]! < base) base = values[a]!;
  }
  if (base !== Infinity) for (let a = 0; a < here; a += 1) values[a]! -= base;
  return { values, base, next };
}

/** The difference below which two layers count as the same: chosen, far under any cost that matters. */
const SAME = 1e-12;

const equal = (a: Float64Array, b: Float64Array): boolean => a.length === b.length && a.every((value, i) => value === b[i] || Math.abs(value - b[i]!) < SAME);

/**
 * Cheapest costs from every state to the end, backwards. Ties go to the state with the lower index, so the result is deterministic.
 * O(layers x states^2). Where `changed` is given, only the layers that the change can reach are computed again: from its last layer back to the first
 * layer before it whose values stay the same. Oracle: brute force over all paths.
 */
export function costsToEnd(lattice: Lattice, changed?: { from: number; to: number; before: CostsToEnd }): CostsToEnd {
  const n = lattice.states.length;
  if (n === 0) return { beyond: [], base: new Float64Array(0), next: [] };
  const beyond = changed ? [...changed.before.beyond] : Array<Float64Array>(n);
  const next = changed ? [...changed.before.next] : Array<Int16Array>(n);
  const base = changed ? Float64Array.from(changed.before.base) : new Float64Array(n);
  let start = n - 2;
  if (changed && changed.to < n - 1) start = changed.to;
  else {
    beyond[n - 1] = new Float64Array(lattice.states[n - 1]!.length);
    next[n - 1] = new Int16Array(lattice.states[n - 1]!.length);
  }
  for (let i = start; i >= 0; i -= 1) {
    const layer = layerBefore(lattice, i, beyond[i + 1]!);
    const settled = changed !== undefined && i < changed.from - 1 && equal(layer.values, changed.before.beyond[i]!);
    beyond[i] = layer.values;
    base[i] = layer.base;
    next[i] = layer.next;
    if (settled) break;
  }
  return { beyond, base, next };
}
