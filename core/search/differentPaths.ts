import { cheapestPath } from './cheapestPath.ts';
import { costsToEnd, type CostsToEnd } from './costsToEnd.ts';
import { type Lattice, type Path, pathCost } from './lattice.ts';

/** Paths that share the first `shared` classes of a found path and then take a class that is not in `without`; the cheapest goes through `state` there. */
interface Branch {
  shared: number;
  without: readonly number[];
  state: number;
  cost: number;
  /** Ways back from each layer to the one before, as far as `shared`. */
  backs: readonly Int16Array[];
}

/** Cheapest costs to reach each state of layer `i` when all layers before keep to the classes of `prefix`; null marks the start. */
function reach(lattice: Lattice, i: number, before: Float64Array | null, from: (state: number) => boolean): { costs: Float64Array; back: Int16Array } {
  const size = lattice.states[i]!.length;
  const costs = new Float64Array(size).fill(before === null ? 0 : Infinity);
  const back = new Int16Array(size).fill(-1);
  if (before !== null) {
    for (let a = 0; a < before.length; a += 1) {
      if (!from(a) || before[a] === Infinity) continue;
      for (let b = 0; b < size; b += 1) {
        const value = before[a]! + lattice.steps[i]![a * size + b]!;
        if (value < costs[b]!) {
          costs[b] = value;
          back[b] = a;
        }
      }
    }
  }
  for (let b = 0; b < size; b += 1) costs[b]! += lattice.states[i]![b]!;
  return { costs, back };
}

/**
 * The `count` cheapest paths no two of which are of the same classes throughout: one representative, the cheapest, for each sequence of classes.
 * Exact: the sequences are split at the layer where they first differ (Lawler 1972, from memory), each part solved with the costs to the end.
 * O(count x layers x states^2). Ties in order of discovery; deterministic. Oracle: brute force over all paths, grouped by classes.
 */
export function differentPaths(lattice: Lattice, classOf: (layer: number, state: number) => number, count: number, toEnd: CostsToEnd = costsToEnd(lattice)): Path[] {
  const first = cheapestPath(lattice, toEnd);
  if (first === null) return [];
  const n = lattice.states.length;
  const found: Path[] = [];
  if (n === 0) return [first];
  const ends = endCosts(toEnd);
  const branches: Branch[] = [{ shared: 0, without: [], state: first.states[0]!, cost: first.cost, backs: [] }];
  while (found.length < count && branches.length > 0) {
    const at = branches.reduce((best, branch, i) => (branch.cost < branches[best]!.cost ? i : best), 0);
    const [branch] = branches.splice(at, 1);
    const path = pathThrough(branch!);
    found.push(path);
    if (found.length < count) split(path, branch!.shared, branch!.without);
  }
  return found;

  function split(path: Path, shared: number, without: readonly number[]): void {
    const classes = path.states.map((state, i) => classOf(i, state));
    const backs: Int16Array[] = [];
    let before: Float64Array | null = null;
    for (let i = 0; i < n; i += 1) {
      const layer: { costs: Float64Array; back: Int16Array } = reach(lattice, i, before, (a) => classOf(i - 1, a) === classes[i - 1]);
      backs.push(layer.back);
      before = layer.costs;
      if (i < shared) continue;
      const barred = i === shared ? [...without, classes[i]!] : [classes[i]!];
      let [state, cost] = [-1, Infinity];
      for (let b = 0; b < layer.costs.length; b += 1) {
        const value = layer.costs[b]! + toEnd.beyond[i]![b]! + ends[i]!;
        if (value < cost && !barred.includes(classOf(i, b))) [state, cost] = [b, value];
      }
      if (state !== -1) branches.push({ shared: i, without: barred, state, cost, backs });
    }
  }

  function pathThrough({ shared, state, backs }: Branch): Path {
    const states = Array<number>(n);
    states[shared] = state;
    for (let i = shared; i > 0; i -= 1) states[i - 1] = backs[i]![states[i]!]!;
    for (let i = shared; i < n - 1; i += 1) states[i + 1] = toEnd.next[i]![states[i]!]!;
    return { states, cost: pathCost(lattice, states) };
  }
}

/** What the layers after each one add to the counted-from-zero costs. */
function endCosts(toEnd: CostsToEnd): Float64Array {
  const sums = new Float64Array(toEnd.base.length);
  for (let i = sums.length - 2; i >= 0; i -= 1) sums[i] = sums[i + 1]! + toEnd.base[i]!;
  return sums;
}
