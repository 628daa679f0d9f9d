import type { Choice, Settled } from './choice.ts';
import type { Search } from './relax.ts';
import { pickedIn, programmeFrom, relax, settle, sharesIn, weigh } from './relax.ts';
import type { Programme } from './simplex.ts';
import { copyOf, reprice, valueOf } from './simplex.ts';

/** The cheapest choice found; `isProved` when there is none cheaper; `misjudged`: the search stopped at a choice that really costs more than the rows say. */
export interface Chosen {
  picked: readonly number[];
  cost: number;
  isProved: boolean;
  misjudged?: readonly number[];
}

/** Rounds of looking for candidates at one node, at most; chosen by trying. */
const ROUNDS = 30;
/** Costs are whole points and the right sides a little apart: a bound this much above a whole number counts as it. */
const ROUNDING = 0.1;

interface Tree {
  search: Search;
  nodes: number;
  isProved: boolean;
}

/** The feature with the largest share that is not whole. */
function undecided(search: Search, programme: Programme): Omit<Settled, 'has'> | undefined {
  let best: Omit<Settled, 'has'> | undefined;
  let largest = 1e-3;
  for (const { group, feature, share } of sharesIn(search, programme)) {
    if (share <= largest || share > 1 - 1e-3) continue;
    largest = share;
    best = { group, feature };
  }
  return best;
}

function descend(tree: Tree, programme: Programme, settled: readonly Settled[]): void {
  const { search } = tree;
  if (search.misjudged) return;
  if (tree.nodes-- <= 0) {
    tree.isProved = false;
    return;
  }
  settle(search, programme, settled, 0);
  reprice(programme);
  const isBound = relax(search, programme, settled, ROUNDS);
  weigh(search, pickedIn(search, programme));
  if (Math.ceil(valueOf(programme) - ROUNDING) >= search.best) {
    if (!isBound) tree.isProved = false;
    return;
  }
  const next = undecided(search, programme);
  if (!next) {
    tree.isProved &&= isBound;
    return;
  }
  for (const has of [true, false]) descend(tree, copyOf(programme), [...settled, { ...next, has }]);
}

/**
 * One candidate for each group at the least cost in all, each row's overrun included, by branch and price: a linear programme at each node, candidates looked
 * for at its prices, branching on whether a group has the feature it has most nearly.
 * @param known a choice to start from
 * @param nodes at most so many nodes
 * @returns the cheapest choice found, `known` where there is none cheaper; invariant: never dearer than `known`. Oracle: all combinations.
 */
export function choose(choice: Choice, known: readonly number[], nodes: number): Chosen {
  const { programme, search } = programmeFrom(choice, known);
  const tree: Tree = { search, nodes, isProved: true };
  descend(tree, programme, []);
  const { picked, best, misjudged } = search;
  return { picked, cost: best, isProved: tree.isProved && !misjudged, ...(misjudged ? { misjudged } : {}) };
}
