import type { Broken } from './broken.ts';
import { brokenIn, directionsOf } from './broken.ts';
import { chanceFrom } from './chance.ts';
import { cheapestPath } from './cheapestPath.ts';
import type { Pool } from './columns.ts';
import { addWay, poolOf, priceAt, relaxedPlan, roomOf } from './columns.ts';
import { dive } from './dive.ts';
import type { Draft } from './draft.ts';
import { CROWDED } from './draft.ts';
import { isImpossible } from './impossible.ts';
import type { Terms } from './judge.ts';
import { termsOf } from './judge.ts';
import type { Model } from './model.ts';
import { modelOf } from './model.ts';
import type { Direction, StaggerProblem, StaggerSettings } from './problem.ts';
import { STAGGER_DEFAULTS } from './problem.ts';
import { rotate } from './rotate.ts';
import { build, improve } from './search.ts';
import { FULL_WORTH } from './worth.ts';

/** Who changes when. */
export interface StaggerPlan {
  /** True when every hard rule holds. */
  feasible: boolean;
  /** True when it is proved that no plan holds every hard rule; where false and not feasible, none was found. */
  provedInfeasible: boolean;
  /** Points; the sum of the terms. */
  cost: number;
  /** No plan costs less, proved. Where it equals the cost the plan is a best one. */
  bound: number;
  terms: Terms;
  /** Hard rules the plan breaks; it is then the nearest plan found. */
  broken: readonly Broken[];
  players: readonly { id: string; changes: readonly number[]; directions: readonly Direction[] }[];
}

/** How long to look. */
export interface Effort {
  /** Fresh plans started from. */
  starts: number;
  /** Tries to improve each. */
  tries: number;
  /** Simplex steps for the bound, about. */
  pivots: number;
}

/** Chosen by trying on seeded problems: about a second for eight players, a few for forty. */
export const EFFORT: Effort = { starts: 4, tries: 4000, pivots: 8000 };

/** Points no plan's soft costs come under: everybody's cheapest way, as if alone. */
function aloneBound(model: Model): number {
  const ways = model.players.map(({ strokes, change }) => cheapestPath(strokes, change, []).changes.map((i) => model.usable[i]!));
  const terms = termsOf(model.problem, model.settings, ways);
  return sumOf(terms) - terms.neighbours - terms.evenness;
}

const sumOf = (terms: object): number => Object.values(terms).reduce((sum: number, points: number) => sum + points, 0);

/** Turns tried where no plan was found, as shares of the shortest limit; chosen, not measured. */
const SHORTEST_TURN = 0.5;
const TURN_STEP = 0.04;

function cheapest(model: Model, pool: Pool, effort: Effort): { draft: Draft; bound: number } {
  const chance = chanceFrom(1);
  const none = new Float64Array(model.usable.length);
  let best = build(model, chance, none);
  best.changes.forEach((changes, p) => addWay(model, pool, pool.kinds[p]!, changes));
  const relaxed = relaxedPlan(model, FULL_WORTH, roomOf(model, pool), pool, effort.pivots);
  const bound = Math.ceil(relaxed.bound - 1e-6);
  const prices = priceAt(model, relaxed.prices);
  const isMixed = pool.first.length * 2 > model.players.length;
  // Dives pay where many players are of one kind; where all differ, fewer plans improved for longer come out cheaper.
  const starts = isMixed ? effort.starts / 2 : effort.starts;
  for (let start = 0; start < starts && best.total > bound; start++) {
    const draft = isMixed ? build(model, chance, prices) : dive(model, pool, relaxed, chance);
    improve(model, draft, prices, (effort.tries * effort.starts) / starts, bound, chance);
    if (draft.total < best.total) best = draft;
  }
  const limit = Math.min(...model.problem.players.map((player) => player.limit));
  for (let share = 1; share > SHORTEST_TURN && best.total >= CROWDED; share -= TURN_STEP) {
    const draft = rotate(model, limit * share);
    improve(model, draft, prices, effort.tries / 4, bound, chance);
    if (draft.total < best.total) best = draft;
  }
  if (best.total < CROWDED) improve(model, best, prices, effort.tries, bound, chance);
  return { draft: best, bound };
}

/**
 * Staggers the bow changes of a section over a passage longer than one bow. Hard rules: nobody exceeds their bow; all start, and where
 * a direction is wanted end, together; desk partners change apart and not on one subdivision; few change within one window. Costs: the
 * files of costs/. Model: everybody plays the whole passage; a change takes no time. Where the rules cannot all hold, the plan nearest
 * to holding them: a player's own limit and end are given up only where that player alone cannot keep them, then crowding, then desks.
 *
 * Search: a bound by column generation (columns.ts), plans by diving into it and by taking players out and putting them back
 * (search.ts). Repeatable: the same problem, the same plan. Tie-break: the first found.
 * @returns the plan, its cost and a proved bound; invariants: bound <= cost; feasible exactly when nothing is broken. Oracle: HiGHS.
 * Example: two players of 5 s bows over 8 s each change once, at least 0.5 s apart.
 */
export function staggerPlan(problem: StaggerProblem, settings: StaggerSettings = STAGGER_DEFAULTS, effort: Effort = EFFORT): StaggerPlan {
  const model = modelOf(problem, settings);
  const { draft, bound } = cheapest(model, poolOf(model), effort);
  const plan = draft.changes.map((changes) => changes.map((i) => model.usable[i]!));
  const terms = termsOf(problem, settings, plan);
  const cost = sumOf(terms);
  const feasible = draft.total < CROWDED;
  return {
    feasible,
    provedInfeasible: !feasible && isImpossible(model, effort.pivots),
    cost,
    bound: feasible ? bound : Math.min(cost, aloneBound(model)),
    terms,
    broken: brokenIn(problem, settings, plan),
    players: problem.players.map(({ id }, p) => ({ id, changes: plan[p]!, directions: directionsOf(problem.start, plan[p]!.length) })),
  };
}
