import type { Model } from './model.ts';
import { BEYOND_LIMIT } from './strokes.ts';

/** The same model in which nothing costs anything but what breaks a rule. Example: a plan that holds every rule costs 0. */
export function rulesOnly(model: Model): Model {
  const free = new Float64Array(model.usable.length);
  return {
    ...model,
    share: model.players.length * model.usable.length,
    players: model.players.map((player) => ({
      ...player,
      change: free,
      neighbours: [],
      strokes: { ...player.strokes, cost: player.strokes.cost.map((cost) => (cost < BEYOND_LIMIT ? 0 : cost)) },
    })),
  };
}
