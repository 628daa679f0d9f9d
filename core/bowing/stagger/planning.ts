import { chanceFrom } from './chance.ts';
import { dive } from './dive.ts';
import type { Draft } from './draft.ts';
import { CROWDED, emptyDraft, restoreTo } from './draft.ts';
import type { Bounded, Master } from './master.ts';
import { masterOf, priceAt, solve } from './master.ts';
import type { Model } from './model.ts';
import { plunge } from './plunge.ts';
import { rechoose } from './refine.ts';
import { rotate } from './rotate.ts';
import { build, improve } from './search.ts';
import type { Meeting } from './shared.ts';
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
}

/** Chosen by trying on seeded problems. */
export const EFFORT: Effort = { rounds: 8, tries: 1500, pivots: 8000 };

/** A plan on the way: everybody's changes, as usable instants. */
export interface Found {
  changes: readonly (readonly number[])[];
  /** Points, rules broken included. */
  total: number;
  /** Proved: no plan that holds every rule costs less. 0 until it is known. */
  bound: number;
}

/** Programmes solved in one plunge at most; how far chance shifts each next one. Chosen by trying. */
const NODES = 60;
const JITTER = 0.1;
/** Turns tried where no plan was found, as shares of the shortest limit; chosen, not measured. */
const SHORTEST_TURN = 0.5;
const TURN_STEP = 0.04;

/** Another whole plan out of the programme, in the draft. */
function another(master: Master, root: Bounded, draft: Draft, met: Meeting[], round: number, chance: () => number): void {
  const { model, kinds } = master;
  if (kinds.length * 4 <= model.players.length) {
    const fresh = emptyDraft(model);
    dive(master, root.prices, fresh, FULL_WORTH, round * JITTER, chance);
    restoreTo(model, draft, fresh.changes);
    return;
  }
  const free = kinds.flatMap((units, kind) => units.map((unit) => ({ kind, unit })));
  rechoose(master, draft, free, met, (choice, known) => plunge(choice, known, round * JITTER, chance, NODES));
}

/**
 * Looks for the cheapest plan of a section and yields every step: at once a first plan, then the bound, then cheaper plans, until one costs what the bound says
 * or the effort is spent. Whoever stops asking keeps the last plan.
 * Bound: column generation over the ways of whole desks (master.ts). Plans: from the programme's shares, mended player by player (search.ts).
 */
export function* planning(model: Model, effort: Effort): Generator<Found, void> {
  const chance = chanceFrom(1);
  const draft = build(model, chance, new Float64Array(model.usable.length));
  let best: Found = { changes: [...draft.changes], total: draft.total, bound: 0 };
  const keep = (bound: number) => {
    if (draft.total < best.total) best = { changes: [...draft.changes], total: draft.total, bound };
    else restoreTo(model, draft, best.changes);
    return (best = { ...best, bound });
  };
  yield best;
  // Alone first: that is quick, and often the plan already costs what everybody alone would pay at least.
  const players = model.players.map((_, p) => [p]);
  const alone = solve(masterOf(model, players, FULL_WORTH), FULL_WORTH, effort.pivots);
  improve(model, draft, priceAt(model, alone.prices), effort.tries, Math.ceil(alone.bound - 1e-6), chance);
  yield keep(Math.ceil(alone.bound - 1e-6));
  if (best.total <= best.bound) return;
  const master = masterOf(model, unitsOf(model), FULL_WORTH);
  const root = solve(master, FULL_WORTH, effort.pivots);
  const bound = Math.max(best.bound, Math.ceil(root.bound - 1e-6));
  const prices = priceAt(model, root.prices);
  const met: Meeting[] = [];
  for (let round = 0; round < effort.rounds && best.total > bound; round++) {
    another(master, root, draft, met, round, chance);
    improve(model, draft, prices, effort.tries, bound, chance);
    yield keep(bound);
  }
  const limit = Math.min(...model.problem.players.map((player) => player.limit));
  for (let share = 1; share > SHORTEST_TURN && best.total >= CROWDED; share -= TURN_STEP) {
    restoreTo(model, draft, rotate(model, limit * share).changes);
    improve(model, draft, prices, effort.tries, bound, chance);
    yield keep(bound);
  }
}
