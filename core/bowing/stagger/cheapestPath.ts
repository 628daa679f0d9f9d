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
  even[0] = 0;
  for (let to = 1; to < nodes; to++) {
    const isEnd = to === nodes - 1;
    const instant = to - 1;
    let evenBest = Infinity;
    let oddBest = Infinity;
    let evenFrom = 0;
    let oddFrom = 0;
    for (let from = reach[to]!; from < to; from++) {
      let step = cost[from * nodes + to]!;
      if (!isEnd) {
        for (const { windows, sums } of entering) {
          const first = Math.max(windows.from[instant]!, from === 0 ? 0 : windows.to[from - 1]! + 1);
          const end = windows.to[instant]! + 1;
          if (first < end) step += sums[end]! - sums[first]!;
        }
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

/** Running sums for `Entering`. Example: `sumsOf([2, 3])` is [0, 2, 5]. */
export function sumsOf(values: ArrayLike<number>): Float64Array {
  const sums = new Float64Array(values.length + 1);
  for (let i = 0; i < values.length; i++) sums[i + 1] = sums[i]! + values[i]!;
  return sums;
}
