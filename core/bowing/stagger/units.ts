import { cheapestPair } from './cheapestPair.ts';
import { cheapestPath } from './cheapestPath.ts';
import { ownCost } from './draft.ts';
import type { Model } from './model.ts';
import type { Strokes } from './strokes.ts';
import { BEYOND_LIMIT } from './strokes.ts';

/** Players whose ways are found together: the two of a desk, or one who sits alone. */
export type Unit = readonly number[];

/** A way through the passage for each player of a unit: usable instants. */
export type Way = readonly (readonly number[])[];

const isStrict = (model: Model, player: number): boolean => {
  const { strokes } = model.players[player]!;
  return Math.max(strokes.cost[1] ?? 0, ...strokes.end) < BEYOND_LIMIT || !strokes.cost.some((cost) => cost >= BEYOND_LIMIT && cost < Infinity);
};

/** Points of a change at each usable instant for one player, at these prices on top. */
export function pointsOf(model: Model, player: number, price: ArrayLike<number>): Float64Array {
  return Float64Array.from(model.players[player]!.change, (own, i) => own + price[i]!);
}

/** The strokes of a player who has to change at these usable instants: none passes over one of them. */
function strokesThrough(strokes: Strokes, musts: readonly number[]): Strokes {
  if (musts.length === 0) return strokes;
  const reach = strokes.reach.slice();
  const sorted = [...musts].sort((x, y) => x - y);
  for (let node = 1, next = 0, last = 0; node < strokes.nodes; node++) {
    while (next < sorted.length && sorted[next]! + 1 < node) last = sorted[next++]! + 1;
    reach[node] = Math.max(reach[node]!, last);
  }
  return { ...strokes, reach };
}

function keepApart({ desk }: Model, one: readonly number[], other: readonly number[]): boolean {
  return one.every((i) => other.every((j) => desk.to[Math.min(i, j)]! < desk.from[Math.max(i, j)]!));
}

/**
 * The cheapest way of a unit where each of its players pays these points for a change. A desk's own rules are kept.
 * @param below only ways that cost less
 * @param musts usable instants at which each player has to change
 * @returns Infinity where there is no such way
 */
export function cheapestWay(model: Model, unit: Unit, points: readonly Float64Array[], below = Infinity, musts: readonly (readonly number[])[] = []): { changes: Way; cost: number } {
  const [first, second] = unit;
  const strokes = strokesThrough(model.players[first!]!.strokes, musts[0] ?? []);
  if (second === undefined) {
    const { changes, cost } = cheapestPath(strokes, points[0]!, []);
    return cost < below ? { changes: [changes], cost } : { changes: [[]], cost: Infinity };
  }
  const other = strokesThrough(model.players[second]!.strokes, musts[1] ?? []);
  const alone = [cheapestPath(strokes, points[0]!, []), cheapestPath(other, points[1]!, [])] as const;
  const least = alone[0].cost + alone[1].cost;
  if (least >= below) return { changes: [[], []], cost: Infinity };
  if (keepApart(model, alone[0].changes, alone[1].changes)) return { changes: [alone[0].changes, alone[1].changes], cost: least };
  return cheapestPair([{ strokes, at: points[0]! }, { strokes: other, at: points[1]! }], model.desk, below);
}

/** Points of a unit's own strokes and changes, whatever the others do. */
export function wayCost(model: Model, unit: Unit, way: Way): number {
  return unit.reduce((sum, player, m) => sum + ownCost(model, player, way[m]!), 0);
}

/**
 * The units of a section: desks together where both can keep limit, end and distance, else each player alone. Every player is in one.
 * Example: four players at two desks: [[0, 1], [2, 3]].
 */
export function unitsOf(model: Model): Unit[] {
  const free = new Float64Array(model.usable.length);
  return model.players.flatMap(({ partner }, p): Unit[] => {
    if (partner < 0) return [[p]];
    const pair = [Math.min(p, partner), Math.max(p, partner)];
    const together = pair.every((player) => isStrict(model, player)) && cheapestWay(model, pair, [free, free]).cost < Infinity;
    if (!together) return [[p]];
    return p === pair[0] ? [pair] : [];
  });
}
