import { cheapestPath } from './cheapestPath.ts';
import { masterOf, solve } from './master.ts';
import type { Model } from './model.ts';
import { isQueue, queued } from './queue.ts';
import { rulesOnly } from './rulesOnly.ts';
import { unitsOf } from './units.ts';
import { CROWDING_ONLY } from './worth.ts';

/** Orders of a queue looked at per instant at most. */
const MOST_STATES = 5000;

/**
 * True when it is proved that no plan holds every hard rule: a player who cannot keep limit and end alone, a desk whose two cannot keep
 * apart, or a lower bound above 0 on how many changes come too close. False proves nothing.
 * @param pivots simplex steps of the bound on crowding
 */
export function isImpossible(model: Model, pivots: number): boolean {
  const bare = rulesOnly(model);
  const free = new Float64Array(model.usable.length);
  if (bare.players.some(({ strokes }) => cheapestPath(strokes, free, []).cost > 0)) return true;
  const units = unitsOf(bare);
  if (units.some((unit) => unit.length === 1 && bare.players[unit[0]!]!.partner >= 0)) return true;
  if (isQueue(bare) && queued(bare, new Float64Array(bare.crowd.first.length), Infinity, MOST_STATES)?.cost === Infinity) return true;
  return solve(masterOf(bare, units, CROWDING_ONLY), CROWDING_ONLY, pivots).bound > 1e-3;
}
