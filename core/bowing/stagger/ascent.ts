import type { Bounded, Master, Prices } from './master.ts';
import { priceAt, roomWorth } from './master.ts';
import { cheapestWay, pointsOf } from './units.ts';
import type { Worth } from './worth.ts';

/** Share of the last direction kept; the part of all rounds without a higher bound after which the step is halved; the step at which it stops. Chosen by trying. */
const KEPT = 0.6;
const PATIENCES = 50;
const LEAST_STEP = 1e-3;

/** The bound at these prices, and how far each window (first) and stretch (after them) is over its room where every unit takes its cheapest way. */
function boundAt(master: Master, prices: Prices): { bound: number; over: Float64Array } {
  const { model, kinds, sizes, room } = master;
  const { crowd, stretch } = model;
  const at = priceAt(model, prices);
  const windows = room.crowd.length;
  const over = Float64Array.from([...room.crowd, ...room.stretch], (left) => -left);
  let bound = -roomWorth(master, prices);
  kinds.forEach(([unit], kind) => {
    const { changes, cost } = cheapestWay(model, unit!, unit!.map((player) => pointsOf(model, player, at)));
    bound += sizes[kind]! * cost;
    for (const instant of changes.flat()) {
      for (let w = crowd.from[instant]!; w <= crowd.to[instant]!; w++) over[w]! += sizes[kind]!;
      over[windows + stretch[instant]!]! += sizes[kind]!;
    }
  });
  return { bound, over };
}

/**
 * Raises the Lagrangian bound by moving prices towards where room is short (subgradient steps sized by Polyak's rule). For passages so crowded that the
 * programme of `solve` does not settle: each round costs one cheapest way a kind, and every round's bound is proved by itself.
 * @param target cost of a known plan
 * @param rounds at most so many
 * @returns the best bound met and its prices; never below that of `start`
 */
export function ascend(master: Master, start: Bounded, worth: Worth, target: number, rounds: number): Bounded {
  const windows = master.room.crowd.length;
  let best: Bounded = start;
  let prices = start.prices;
  let direction: Float64Array | undefined;
  let step = 1;
  const patience = Math.ceil(rounds / PATIENCES);
  for (let round = 0, idle = 0; round < rounds && step > LEAST_STEP && Math.ceil(best.bound - 1e-6) < target; round++) {
    const { bound, over } = boundAt(master, prices);
    if (bound > best.bound + 1e-6) {
      best = { ...start, bound, prices };
      idle = 0;
    } else if (++idle > patience) {
      idle = 0;
      step /= 2;
      prices = best.prices;
      direction = undefined;
      continue;
    }
    const last = direction;
    const next = last ? over.map((by, r) => (1 - KEPT) * by + KEPT * last[r]!) : over;
    direction = next;
    const size = (step * (target - bound)) / next.reduce((sum, by) => sum + by * by, 1e-9);
    const moved = (list: Float64Array, from: number, most: number) => list.map((price, k) => Math.min(most, Math.max(0, price + size * next[from + k]!)));
    prices = { crowd: moved(prices.crowd, 0, worth.crowd), stretch: moved(prices.stretch, windows, worth.stretch) };
  }
  return best;
}
