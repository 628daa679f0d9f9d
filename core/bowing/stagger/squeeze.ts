import { emptyDraft, put } from './draft.ts';
import type { Model } from './model.ts';
import { improve } from './search.ts';

/** Usable instants of everybody's changes. */
type Plan = readonly (readonly number[])[];

/** Warmth of the search at first and at last, points, and how it falls each time. Chosen by trying. */
const WARM = 5;
const COOL = 0.6;
const FALL = 0.995;
/** Points of a change too many in one window, in warmths turned over: little while the search is warm. Chosen by trying. */
const CROWDING = 130;
/** Share of all the changes the windows take from which on a passage is crowded. Chosen by trying. */
const FULL = 0.7;

/**
 * Whether so many changes are made that hardly one can move without another: then the warm search of planning.ts stays with who changes how often.
 * Example: of 60 windows apart from each other, for two changes each, 117 changes fill nearly all.
 */
export function isCrowded({ crowd, allowed, usable }: Model, changes: Plan): boolean {
  let apart = 0;
  let last = -1;
  for (let i = 0; i < usable.length; i++) {
    if (crowd.from[i]! <= last) continue;
    apart++;
    last = crowd.to[i]!;
  }
  return changes.reduce((sum, list) => sum + list.length, 0) >= FULL * apart * allowed;
}

/**
 * Looks for cheaper plans by way of plans that crowd: a change too many costs little at first and more and more as the search cools, so that players come to
 * other numbers of changes, for which no single step has room (simulated annealing with a rising penalty, common practice). Proves nothing.
 * @param changes the plan to begin from
 * @param prices points of a change at each usable instant, from the lower bound
 * @param tries of each step
 * @returns the plan after each step; it may be dearer than the last and break rules
 */
export function* squeeze(model: Model, changes: Plan, prices: Float64Array, tries: number, chance: () => number): Generator<Plan, void> {
  let now = changes;
  for (let warmth = WARM; warmth > COOL; warmth *= FALL) {
    const draft = emptyDraft(model, Math.round(CROWDING / warmth));
    now.forEach((list, player) => put(model, draft, player, list));
    improve(model, draft, prices, tries, 0, chance, warmth);
    now = draft.changes;
    yield draft.changes;
  }
}
