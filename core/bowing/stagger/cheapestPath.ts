import type { Strokes } from './strokes.ts';
import type { Windows } from './windows.ts';

/** Points for entering a window: paid once however often the player changes in it. `sums[w]` is the sum over the windows before w. */
export interface Entering {
  windows: Windows;
  sums: Float64Array;
}

/**
 * One player's cheapest way through the passage. Exact: nodes in order of time, one state for an even and one for an odd number of
 * changes so far. Cost of a way: its strokes, `at` of each change, and `entering` of each window it changes in.
 * @param at points of a change at each usable instant
 * @param entering points for entering windows; at most two families
 * @returns the usable instants of the changes and the points; O(nodes x strokes that reach a node). Tie-break: earlier change.
 */
export function cheapestPath(strokes: Strokes, at: Float64Array, entering: readonly Entering[]): { changes: number[]; cost: number } {
  const { nodes, cost, reach } = strokes;
  const best = [new Float64Array(nodes).fill(Infinity), new Float64Array(nodes).fill(Infinity)] as const;
  const back = [new Int32Array(nodes), new Int32Array(nodes)] as const;
  const [even, odd] = best;
  const firsts = new Int32Array(entering.length);
  const lasts = new Int32Array(entering.length);
  const ends = new Float64Array(entering.length);
  even[0] = 0;
  for (let to = 1; to < nodes; to++) {
    const isEnd = to === nodes - 1;
    const instant = to - 1;
    const row = to * nodes;
    const families = isEnd ? 0 : entering.length;
    for (let k = 0; k < families; k++) {
      const { windows, sums } = entering[k]!;
      firsts[k] = windows.from[instant]!;
      lasts[k] = windows.to[instant]! + 1;
      ends[k] = sums[lasts[k]!]!;
    }
    let evenBest = Infinity;
    let oddBest = Infinity;
    let evenFrom = 0;
    let oddFrom = 0;
    for (let from = reach[to]!; from < to; from++) {
      let step = cost[row + from]!;
      for (let k = 0; k < families; k++) {
        const { windows, sums } = entering[k]!;
        // The last change lies in every window from the instant's first one up to its own last one: those are paid already.
        const first = from === 0 ? 0 : windows.to[from - 1]! + 1;
        step += ends[k]! - sums[first > firsts[k]! ? Math.min(first, lasts[k]!) : firsts[k]!]!;
      }
      const viaOdd = odd[from]! + step;
      const viaEven = even[from]! + step;
      if (viaOdd < evenBest) {
        evenBest = viaOdd;
        evenFrom = from;
      }
      if (viaEven < oddBest) {
        oddBest = viaEven;
        oddFrom = from;
      }
    }
    const own = isEnd ? 0 : at[instant]!;
    even[to] = evenBest + own;
    odd[to] = oddBest + own;
    back[0][to] = evenFrom;
    back[1][to] = oddFrom;
  }
  // The last stroke is a step without a change, so an even number of changes arrives in the odd state.
  const last = nodes - 1;
  const afterEven = odd[last]! + strokes.end[0];
  const afterOdd = even[last]! + strokes.end[1];
  let parity: 0 | 1 = afterEven <= afterOdd ? 1 : 0;
  const changes: number[] = [];
  for (let node = back[parity][last]!; node > 0; ) {
    parity = parity === 0 ? 1 : 0;
    changes.unshift(node - 1);
    node = back[parity][node]!;
  }
  return { changes, cost: Math.min(afterEven, afterOdd) };
}
