import type { Broken } from './broken.ts';
import { brokenIn, directionsOf } from './broken.ts';
import { cheapestPath } from './cheapestPath.ts';
import { CROWDED } from './draft.ts';
import type { Terms } from './judge.ts';
import { termsOf } from './judge.ts';
import type { Model } from './model.ts';
import { modelOf } from './model.ts';
import type { Effort, Found } from './planning.ts';
import { EFFORT, planning } from './planning.ts';
import type { Direction, StaggerProblem, StaggerSettings } from './problem.ts';
import { STAGGER_DEFAULTS } from './problem.ts';

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

/** Points no plan's soft costs come under: everybody's cheapest way, as if alone. */
function aloneBound(model: Model): number {
  const ways = model.players.map(({ strokes, change }) => cheapestPath(strokes, change, []).changes.map((i) => model.usable[i]!));
  const terms = termsOf(model.problem, model.settings, ways);
  return sumOf(terms) - terms.neighbours - terms.evenness;
}

const sumOf = (terms: object): number => Object.values(terms).reduce((sum: number, points: number) => sum + points, 0);

/**
 * Staggers the bow changes of a section over a passage longer than one bow. Hard rules: nobody exceeds their bow; all start, and where
 * a direction is wanted end, together; desk partners change apart and not on one subdivision; few change within one window. Costs: the
 * files of costs/. Model: everybody plays the whole passage; a change takes no time. Where the rules cannot all hold, the plan nearest
 * to holding them: a player's own limit and end are given up only where that player alone cannot keep them, then crowding, then desks.
 *
 * Repeatable: the same problem, the same plan. Tie-break: the first found. How: planning.ts.
 * @returns the plan, its cost and a proved bound; invariants: bound <= cost; feasible exactly when nothing is broken. Oracle: HiGHS.
 * Example: two players of 5 s bows over 8 s each change once, at least 0.5 s apart.
 */
export function staggerPlan(problem: StaggerProblem, settings: StaggerSettings = STAGGER_DEFAULTS, effort: Effort = EFFORT): StaggerPlan {
  let last: StaggerPlan | undefined;
  for (const step of staggerSteps(problem, settings, effort)) last = step;
  return last!;
}

/**
 * The same step by step: a first plan at once, then better ones with a higher bound; the last is that of `staggerPlan`. Whoever stops asking keeps the plan
 * they have, a whole one each time. Where no plan is possible, steps say so from when it is proved.
 */
export function* staggerSteps(problem: StaggerProblem, settings: StaggerSettings = STAGGER_DEFAULTS, effort: Effort = EFFORT): Generator<StaggerPlan, void> {
  const model = modelOf(problem, settings);
  for (const found of planning(model, effort)) yield planOf(model, found);
}

function planOf(model: Model, { changes, total, bound, isImpossible }: Found): StaggerPlan {
  const { problem, settings } = model;
  const plan = changes.map((list) => list.map((i) => model.usable[i]!));
  const terms = termsOf(problem, settings, plan);
  const cost = sumOf(terms);
  const feasible = total < CROWDED;
  return {
    feasible,
    provedInfeasible: isImpossible,
    cost,
    bound: feasible ? bound : Math.min(cost, aloneBound(model)),
    terms,
    broken: brokenIn(problem, settings, plan),
    players: problem.players.map(({ id }, p) => ({ id, changes: plan[p]!, directions: directionsOf(problem.start, plan[p]!.length) })),
  };
}
