import type { Strokes } from './strokes.ts';
import type { Windows } from './windows.ts';

/** One of the two at a desk: strokes, and points of a change at each usable instant (Infinity where none is allowed). */
export interface Partner {
  strokes: Strokes;
  at: ArrayLike<number>;
}

/** States by the latest change of both (node t, by whom), the other's last change (node s < t), and who has made an odd number so far. */
interface Table {
  nodes: number;
  width: number;
  value: Float64Array;
  back: Int32Array;
}

const stateOf = ({ width }: Table, t: number, who: number, s: number): number => ((t * 2 + who) * width + (t - 1 - s)) * 4;

function emptyTable(a: Strokes, b: Strokes): Table {
  const { nodes } = a;
  let width = 1;
  for (let t = 1; t + 1 < nodes; t++) width = Math.max(width, t - Math.min(a.reach[t + 1]!, b.reach[t + 1]!));
  const size = nodes * 2 * width * 4;
  return { nodes, width, value: new Float64Array(size).fill(Infinity), back: new Int32Array(size) };
}

/**
 * Improves the states of both parities at `to` from those at `from`; `flip` is the changer's bit. `left` and `leftOther`: what each has still to pay at least,
 * by parity; states that cannot come under `below` are dropped.
 */
function pass(table: Table, from: number, to: number, added: number, flip: number, [left, at]: readonly [Float64Array, number], [leftOther, atOther]: readonly [Float64Array, number], below: number): void {
  const { value, back } = table;
  for (let parity = 0; parity < 4; parity++) {
    const points = value[from + parity]! + added;
    const after = parity ^ flip;
    if (points >= value[to + after]! || points + left[at + ((after & flip) === 0 ? 0 : 1)]! + leftOther[atOther + ((after & (3 - flip)) === 0 ? 0 : 1)]! >= below) continue;
    value[to + after] = points;
    back[to + after] = from + parity;
  }
}

/** What one has still to pay at least from each node on, after an even and an odd number of changes so far. */
export function leftFrom({ strokes, at }: Partner): Float64Array {
  const { nodes, cost, reach, end } = strokes;
  const left = new Float64Array(nodes * 2).fill(Infinity);
  left[2 * nodes - 2] = end[0];
  left[2 * nodes - 1] = end[1];
  for (let to = nodes - 1; to > 0; to--) {
    const isEnd = to === nodes - 1;
    const own = isEnd ? 0 : at[to - 1]!;
    const [even, odd] = isEnd ? [left[2 * to]!, left[2 * to + 1]!] : [left[2 * to + 1]! + own, left[2 * to]! + own];
    for (let from = reach[to]!; from < to; from++) {
      const stroke = cost[to * nodes + from]!;
      if (stroke + even < left[2 * from]!) left[2 * from] = stroke + even;
      if (stroke + odd < left[2 * from + 1]!) left[2 * from + 1] = stroke + odd;
    }
  }
  return left;
}

const START = -1;

interface Search {
  table: Table;
  both: readonly [Partner, Partner];
  /** What each has still to pay at least. */
  left: readonly [Float64Array, Float64Array];
  below: number;
}

function begin({ table, both, left, below }: Search): void {
  for (const who of [0, 1] as const) {
    const { strokes, at } = both[who];
    const other = both[who === 0 ? 1 : 0].strokes;
    for (let t = 1; t < table.nodes - 1 && strokes.reach[t] === 0 && other.reach[t + 1] === 0; t++) {
      const points = strokes.cost[t * table.nodes]! + at[t - 1]!;
      if (points + left[who][2 * t + 1]! + left[who === 0 ? 1 : 0][0]! >= below) continue;
      const state = stateOf(table, t, who, 0) + (1 << who);
      table.value[state] = points;
      table.back[state] = START;
    }
  }
}

/** First node whose change may follow that of a partner at node t. */
function clearOf(desk: Windows, nodes: number): Int32Array {
  const clear = new Int32Array(nodes);
  for (let t = 1, next = 1; t < nodes - 1; t++) {
    while (next < nodes - 1 && (next <= t || desk.from[next - 1]! <= desk.to[t - 1]!)) next++;
    clear[t] = next;
  }
  return clear;
}

function run({ table, both, left, below }: Search, desk: Windows): void {
  const { nodes } = table;
  const clear = clearOf(desk, nodes);
  for (let t = 1; t < nodes - 1; t++) {
    for (const who of [0, 1] as const) {
      const own = both[who];
      const other = both[who === 0 ? 1 : 0];
      const [leftOwn, leftOther] = who === 0 ? left : [left[1], left[0]];
      for (let s = other.strokes.reach[t + 1]!; s < t; s++) {
        const state = stateOf(table, t, who, s);
        if (Math.min(table.value[state]!, table.value[state + 1]!, table.value[state + 2]!, table.value[state + 3]!) === Infinity) continue;
        for (let next = t + 1; next < nodes - 1 && own.strokes.reach[next]! <= t && other.strokes.reach[next + 1]! <= s; next++) {
          pass(table, state, stateOf(table, next, who, s), own.strokes.cost[next * nodes + t]! + own.at[next - 1]!, 1 << who, [leftOwn, 2 * next], [leftOther, 2 * s], below);
        }
        for (let next = clear[t]!; next < nodes - 1 && other.strokes.reach[next]! <= s && own.strokes.reach[next + 1]! <= t; next++) {
          pass(table, state, stateOf(table, next, 1 - who, t), other.strokes.cost[next * nodes + s]! + other.at[next - 1]!, 2 >> who, [leftOther, 2 * next], [leftOwn, 2 * t], below);
        }
      }
    }
  }
}

/** Follows the states back to the start. */
function changesFrom(table: Table, state: number): [number[], number[]] {
  const changes: [number[], number[]] = [[], []];
  for (let at = state; at !== START; at = table.back[at]!) {
    const row = Math.floor(at / 4 / table.width);
    changes[(row % 2) as 0 | 1].unshift(Math.floor(row / 2) - 1);
  }
  return changes;
}

/**
 * The cheapest way of two who share a desk: both keep limit and end direction and never change within one desk window. Exact: changes of both in order
 * of time. Cost: strokes and `at` of both.
 * @param below only ways that cost less are looked for: the closer to the cheapest, the less work
 * @returns usable instants of the changes of both and the points; Infinity and no changes where there is no such way.
 * O(nodes x strokes that reach a node squared). Tie-break: the first found. Oracle: all pairs of subsets.
 */
export function cheapestPair(both: readonly [Partner, Partner], desk: Windows, below = Infinity): { changes: [number[], number[]]; cost: number } {
  const [a, b] = [both[0].strokes, both[1].strokes];
  const left = [leftFrom(both[0]), leftFrom(both[1])] as const;
  if (left[0][0]! + left[1][0]! >= below) return { changes: [[], []], cost: Infinity };
  const table = emptyTable(a, b);
  const { nodes } = table;
  const last = nodes - 1;
  const search = { table, both, left, below };
  begin(search);
  run(search, desk);
  let cost = a.reach[last] === 0 && b.reach[last] === 0 ? a.cost[last * nodes]! + b.cost[last * nodes]! + a.end[0] + b.end[0] : Infinity;
  let best = START;
  for (let t = 1; t < last; t++) {
    for (const who of [0, 1] as const) {
      const [own, other] = who === 0 ? [a, b] : [b, a];
      if (own.reach[last]! > t) continue;
      for (let s = other.reach[last]!; s < t; s++) {
        const state = stateOf(table, t, who, s);
        const added = own.cost[last * nodes + t]! + other.cost[last * nodes + s]!;
        for (let parity = 0; parity < 4; parity++) {
          const points = table.value[state + parity]! + added + a.end[(parity & 1) as 0 | 1] + b.end[(parity >> 1) as 0 | 1];
          if (points < cost) {
            cost = points;
            best = state + parity;
          }
        }
      }
    }
  }
  return cost < below ? { changes: changesFrom(table, best), cost } : { changes: [[], []], cost: Infinity };
}
