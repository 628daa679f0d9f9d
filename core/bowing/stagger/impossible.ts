import { poolOf, relaxedPlan, roomOf } from './columns.ts';
import type { Model } from './model.ts';
import { BEYOND_LIMIT } from './strokes.ts';
import { cheapestPath } from './cheapestPath.ts';
import { CROWDING_ONLY } from './worth.ts';

/** The same model in which nothing costs anything but what breaks a rule. */
function rulesOnly(model: Model): Model {
  const free = new Float64Array(model.usable.length);
  return {
    ...model,
    players: model.players.map((player) => ({
      ...player,
      change: free,
      strokes: { ...player.strokes, cost: player.strokes.cost.map((cost) => (cost < BEYOND_LIMIT ? 0 : cost)) },
    })),
  };
}

/** Player pairs at one desk who cannot keep apart, each within their own limits: every pair of last changes that can be reached, in order of time. */
function desksCannot(model: Model): boolean {
  return model.players.some(({ partner }, p) => partner > p && !pairCan(model, p, partner));
}

function pairCan(model: Model, a: number, b: number): boolean {
  const both = [model.players[a]!.strokes, model.players[b]!.strokes] as const;
  const nodes = both[0].nodes;
  const isStroke = (who: 0 | 1, from: number, to: number) => both[who].cost[to * nodes + from]! < BEYOND_LIMIT;
  const together = (i: number, j: number) => i > 0 && j > 0 && model.desk.to[Math.min(i, j) - 1]! >= model.desk.from[Math.max(i, j) - 1]!;
  // A state is both players' last change and whether each has made an odd number: packed into one number.
  const pack = (i: number, j: number, odd: number) => (i * nodes + j) * 4 + odd;
  let states = new Set<number>([pack(0, 0, 0)]);
  for (let to = 1; to < nodes - 1; to++) {
    const next = new Set<number>();
    for (const state of states) {
      const odd = state % 4;
      const j = Math.floor(state / 4) % nodes;
      const i = Math.floor(state / 4 / nodes);
      if (isStroke(0, i, to) && !together(to, j)) next.add(pack(to, j, odd ^ 1));
      if (isStroke(1, j, to) && !together(to, i)) next.add(pack(i, to, odd ^ 2));
      next.add(state);
    }
    states = new Set([...next].filter((state) => {
      const j = Math.floor(state / 4) % nodes;
      const i = Math.floor(state / 4 / nodes);
      return both[0].reach[to + 1]! <= i && both[1].reach[to + 1]! <= j;
    }));
  }
  return [...states].some((state) => {
    const odd = state % 4;
    const j = Math.floor(state / 4) % nodes;
    const i = Math.floor(state / 4 / nodes);
    return isStroke(0, i, nodes - 1) && isStroke(1, j, nodes - 1) && both[0].end[(odd & 1) as 0 | 1] === 0 && both[1].end[(odd >> 1) as 0 | 1] === 0;
  });
}

/**
 * True when it is proved that no plan holds every hard rule: a player who cannot keep limit and end alone, a desk whose two cannot keep
 * apart, or a lower bound above 0 on how many changes come too close. False proves nothing.
 * @param simplex steps of the bound on crowding
 */
export function isImpossible(model: Model, pivots: number): boolean {
  const bare = rulesOnly(model);
  const free = new Float64Array(model.usable.length);
  if (bare.players.some(({ strokes }) => cheapestPath(strokes, free, []).cost > 0)) return true;
  if (desksCannot(model)) return true;
  const pool = poolOf(bare);
  return relaxedPlan(bare, CROWDING_ONLY, roomOf(bare, pool), pool, pivots).bound > 1e-3;
}
