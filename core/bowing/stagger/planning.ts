import { ascend } from './ascent.ts';
import { chanceFrom } from './chance.ts';
import { dive } from './dive.ts';
import { CROWDED, emptyDraft, restoreTo } from './draft.ts';
import { isImpossible } from './impossible.ts';
import type { Bounded, Master, Prices } from './master.ts';
import { addWay, masterOf, priceAt, solve } from './master.ts';
import type { Model } from './model.ts';
import { plunge } from './plunge.ts';
import { isQueue, queued } from './queue.ts';
import { rechoose } from './refine.ts';
import { rotate } from './rotate.ts';
import { rulesOnly } from './rulesOnly.ts';
import { build, improve } from './search.ts';
import { seatWays } from './seating.ts';
import type { Meeting } from './shared.ts';
import { isCrowded, squeeze } from './squeeze.ts';
import { unitsOf } from './units.ts';
import { FULL_WORTH } from './worth.ts';

/** How long to look. Counts and not seconds: the same problem gives the same plan on every machine. */
export interface Effort {
  /** Whole plans looked for by the bound's prices. */
  rounds: number;
  /** Tries to improve each. */
  tries: number;
  /** Simplex steps for the bound, about. */
  pivots: number;
  /** Share of the cost within which of the bound a plan of many strokes is left at; with few strokes it is always gone on. */
  near: number;
}

/** Chosen by trying on seeded problems. */
export const EFFORT: Effort = { rounds: 8, tries: 3000, pivots: 8000, near: 0.005 };
/** Strokes all players could draw from which on they are many: an exact solver did not get through them in 20 s (tried, not proved). */
const MANY = 60_000;

/** A plan on the way: everybody's changes, as usable instants. */
export interface Found {
  changes: readonly (readonly number[])[];
  /** Points, rules broken included. */
  total: number;
  /** Proved: no plan that holds every rule costs less. 0 until it is known. */
  bound: number;
  /** True when it is proved that no plan holds every rule. */
  isImpossible: boolean;
}

/** Programmes solved in one plunge at most; how far chance shifts each next one. Chosen by trying. */
const NODES = 60;
const JITTER = 0.1;
/** Plunges in a row that find nothing cheaper before it is left at that; where the plan is near what would be enough, within so many times the share. */
const IDLE = 3;
const IDLE_NEAR = 1;
const NEARLY = 2;
/** Plans looked for with everybody alone before whole desks are. */
const QUICK = 3;
/** Warmth of the search for cheaper plans at first and at last, points, and how it falls each time. Chosen by trying. */
const WARM = 2.5;
const COOL = 0.4;
const FALL = 0.85;
/** Steps of the search by way of crowding for each round of tries. Chosen by trying. */
const SQUEEZED = 6;
/** Rounds of raising the bound for one kind; what the bound is raised towards where no plan is known, as its multiple. Chosen by trying. */
const ASCENT = 8000;
const TARGET = 1.2;
/** Orders of the queue looked at per instant at most. */
const MOST_STATES = 5000;
/** Turns tried where no plan was found, as shares of the shortest limit; chosen, not measured. */
const SHORTEST_TURN = 0.5;
const TURN_STEP = 0.04;

/** Whether so many units are alike that the programme speaks of kinds rather than of single ones. */
const isAlike = ({ kinds, model }: Master): boolean => kinds.length * 4 <= model.players.length;

/** The programme solved, and where it does not settle the bound raised on its own and the programme taken up again from there. */
function bounded(master: Master, { pivots }: Effort, target: number, rounds: number, start?: Prices): Bounded {
  const solved = solve(master, FULL_WORTH, pivots, start);
  if (solved.isSettled || rounds === 0) return solved;
  const raised = ascend(master, solved, FULL_WORTH, target < CROWDED ? target : solved.bound * TARGET, Math.ceil(rounds / master.kinds.length));
  const again = solve(master, FULL_WORTH, pivots, raised.prices);
  return again.bound > raised.bound ? again : { ...raised, isSettled: again.isSettled };
}

/** The cost a plan is left at, given the bound; at so many times the share. */
function enoughFor({ players }: Model, { near }: Effort): (bound: number, times?: number) => number {
  const strokes = players.reduce((sum, { strokes: { reach } }) => reach.reduce((all, from, to) => all + to - from, sum), 0);
  return 2 * strokes > MANY ? (bound, times = 1) => Math.floor(bound / (1 - times * near)) : (bound) => bound;
}

/** Turns to try, seconds. */
function turnsFor({ problem }: Model): number[] {
  const limit = Math.min(...problem.players.map((player) => player.limit));
  return Array.from({ length: Math.ceil((1 - SHORTEST_TURN) / TURN_STEP) }, (_, k) => limit * (1 - k * TURN_STEP));
}

/** A whole plan out of the programme where many units are alike. */
function dived(master: Master, { prices }: Bounded, round: number, chance: () => number): Found['changes'] {
  const fresh = emptyDraft(master.model);
  dive(master, prices, fresh, FULL_WORTH, round * JITTER, chance);
  return fresh.changes;
}

/**
 * Looks for the cheapest plan of a section and yields every step: at once a first plan, then the bound, then cheaper plans, until one costs what the bound says,
 * or where there are many strokes little more, or the effort is spent. Whoever stops asking keeps the last plan.
 * Bound: column generation over the ways of whole desks (master.ts). Plans: from the programme's shares, mended player by player (search.ts).
 * Where no plan holds the rules at once, one that does is looked for without regard to costs. Crowded passages are searched by way of plans that crowd as well (squeeze.ts).
 * @param isBare whether nothing costs anything but what breaks a rule
 */
export function* planning(model: Model, effort: Effort, isBare = false): Generator<Found, void> {
  const chance = chanceFrom(1);
  const enough = enoughFor(model, effort);
  const draft = build(model, chance, new Float64Array(model.usable.length));
  let best: Found = { changes: [...draft.changes], total: draft.total, bound: 0, isImpossible: false };
  const isBetter = (): boolean => {
    if (draft.total >= best.total) return false;
    best = { ...best, changes: [...draft.changes], total: draft.total };
    return true;
  };
  const keep = (bound: number) => {
    if (!isBetter()) restoreTo(model, draft, best.changes);
    return (best = { ...best, bound });
  };
  yield best;
  for (const turn of turnsFor(model)) {
    if (best.total < CROWDED) break;
    restoreTo(model, draft, rotate(model, turn).changes);
    improve(model, draft, new Float64Array(model.usable.length), effort.tries / 4, 0, chance);
    yield keep(0);
  }
  if (best.total >= CROWDED && !isBare) {
    if (isImpossible(model, effort.pivots)) yield (best = { ...best, isImpossible: true });
    else {
      for (const { changes } of planning(rulesOnly(model), effort, true)) {
        restoreTo(model, draft, changes);
        yield keep(0);
      }
    }
  }
  // Everybody alone first: that is quick, and often the plan already costs what all would pay alone at least.
  const alone = masterOf(model, model.players.map((_, p) => [p]), FULL_WORTH);
  best.changes.forEach((changes, player) => addWay(alone, alone.kinds.findIndex((units) => units.some(([one]) => one === player)), [changes]));
  const quick = bounded(alone, effort, best.total, best.isImpossible ? 0 : ASCENT);
  const least = Math.ceil(quick.bound - 1e-6);
  yield (best = { ...best, bound: least });
  const isDived = isAlike(alone) && !best.isImpossible;
  for (let round = 0; round < (isDived ? QUICK : 1) && best.total > enough(least); round++) {
    if (isDived) restoreTo(model, draft, dived(alone, quick, round, chance));
    improve(model, draft, priceAt(model, quick.prices), effort.tries, enough(least), chance);
    yield keep(least);
  }
  if (best.total > enough(least) && !best.isImpossible && isQueue(model)) {
    const { ways } = queued(model, quick.prices.crowd, best.total < CROWDED ? best.total : Infinity, MOST_STATES) ?? { ways: [] };
    if (ways.length > 0) {
      seatWays(model, draft, ways);
      improve(model, draft, priceAt(model, quick.prices), effort.tries, enough(least), chance);
      yield keep(least);
    }
  }
  const quickPrices = priceAt(model, quick.prices);
  const rough = best.changes;
  for (let warmth = WARM; warmth > COOL && !best.isImpossible && best.total > enough(least); warmth *= FALL) {
    improve(model, draft, quickPrices, effort.tries, enough(least), chance, warmth);
    if (isBetter()) yield best;
  }
  if (!best.isImpossible && best.total > enough(least) && isCrowded(model, best.changes)) {
    // A chance of its own: what comes after finds the same with and without it.
    for (const changes of squeeze(model, best.changes, quickPrices, effort.tries / SQUEEZED, chanceFrom(2))) {
      restoreTo(model, draft, changes);
      if (isBetter()) yield best;
      if (best.total <= enough(least)) break;
    }
  }
  if (best.isImpossible || best.total <= enough(least)) return;
  const master = masterOf(model, unitsOf(model), FULL_WORTH);
  master.kinds.forEach((units, kind) => units.forEach((unit) => addWay(master, kind, unit.map((player) => best.changes[player]!))));
  const root = bounded(master, effort, best.total, ASCENT / 40, quick.prices);
  const bound = Math.max(best.bound, Math.ceil(root.bound - 1e-6));
  yield (best = { ...best, bound });
  const prices = priceAt(model, root.prices);
  const free = master.kinds.flatMap((units, kind) => units.map((unit) => ({ kind, unit })));
  const met: Meeting[] = [];
  // From the plan before the warm search: what is dearer leaves a plunge more to try, and the two end in different places.
  restoreTo(model, draft, rough);
  for (let round = 0, idle = 0; round < effort.rounds && idle < (best.total > enough(bound, NEARLY) ? IDLE : IDLE_NEAR) && best.total > enough(bound); round++) {
    const before = { best: best.total, total: draft.total, changes: [...draft.changes] };
    if (isAlike(master)) restoreTo(model, draft, dived(master, root, round, chance));
    else rechoose(master, draft, free, met, (choice, known) => plunge(choice, known, round * JITTER, chance, NODES));
    improve(model, draft, prices, effort.tries, enough(bound), chance);
    isBetter();
    yield best;
    const isCheaper = best.total < before.best || (draft.total < before.total && best.total > enough(bound, NEARLY));
    if (draft.total > before.total) restoreTo(model, draft, before.changes);
    idle = isCheaper ? 0 : idle + 1;
  }
}
