import { strokeLengthCost } from './costs/strokeLength.ts';
import type { StaggerPlayer, StaggerProblem } from './problem.ts';
import { SAME_TIME } from './problem.ts';

/** Points for each tenth of a second a bow lasts beyond its limit, where that player alone cannot keep it. Above every sum of costs. */
export const BEYOND_LIMIT = 1e8;
/** Points for ending in the wrong direction, where that player alone cannot keep it. */
export const WRONG_END = 1e11;

/** Every stroke one player could draw. Nodes: 0 is the start, 1 to m the usable instants, m + 1 the end. */
export interface Strokes {
  nodes: number;
  /** `cost[to * nodes + from]`: points of a stroke; Infinity where it is no stroke. */
  cost: Float64Array;
  /** First node from which a stroke may reach each node. */
  reach: Int32Array;
  /** Points of ending after an even (0) and an odd (1) number of changes. */
  end: readonly [number, number];
}

function table(times: readonly number[], player: StaggerPlayer, bound: boolean): Pick<Strokes, 'nodes' | 'cost' | 'reach'> {
  const nodes = times.length;
  const cost = new Float64Array(nodes * nodes).fill(Infinity);
  const reach = new Int32Array(nodes);
  for (let to = 1; to < nodes; to++) {
    let from = to - 1;
    for (; from >= 0; from--) {
      const seconds = times[to]! - times[from]!;
      const beyond = Math.max(0, seconds - player.limit - SAME_TIME);
      if (beyond > 0 && bound) break;
      cost[to * nodes + from] = strokeLengthCost(seconds, player.comfortable) + BEYOND_LIMIT * Math.ceil(beyond * 10);
    }
    reach[to] = from + 1;
  }
  return { nodes, cost, reach };
}

/** Numbers of changes (even, odd) with which the end can be reached at all. */
function reachable({ nodes, reach }: Pick<Strokes, 'nodes' | 'reach'>): [boolean, boolean] {
  const even = new Uint8Array(nodes);
  const odd = new Uint8Array(nodes);
  even[0] = 1;
  for (let to = 1; to < nodes; to++) {
    for (let from = reach[to]!; from < to; from++) {
      odd[to]! |= even[from]!;
      even[to]! |= odd[from]!;
    }
  }
  // Drawing the last stroke is a step but not a change.
  return [odd[nodes - 1] === 1, even[nodes - 1] === 1];
}

/**
 * The strokes one player may draw between the usable instants. Where the player alone can keep limit and end direction, only strokes
 * that keep them are there; where not, strokes beyond the limit are there at BEYOND_LIMIT points a tenth of a second, and if even then
 * no way leads to the wanted direction, a wrong end at WRONG_END.
 * @param times seconds of the usable instants, rising
 */
export function strokesFor(times: readonly number[], problem: Pick<StaggerProblem, 'duration' | 'start' | 'end'>, player: StaggerPlayer): Strokes {
  const nodes = [0, ...times, problem.duration];
  const wanted = problem.end === null ? [true, true] : problem.end === problem.start ? [true, false] : [false, true];
  const possible = (found: readonly boolean[]) => found.some((yes, parity) => yes && wanted[parity]);
  const strict = table(nodes, player, true);
  const chosen = possible(reachable(strict)) ? strict : table(nodes, player, false);
  const wrong = possible(reachable(chosen)) ? Infinity : WRONG_END;
  return { ...chosen, end: [wanted[0] ? 0 : wrong, wanted[1] ? 0 : wrong] };
}
