import { answerTo } from './answer.ts';
import type { Pool, Relaxed, Room } from './columns.ts';
import { priceAt, relaxedPlan } from './columns.ts';
import type { Draft } from './draft.ts';
import { CROWDED, emptyDraft, put, take } from './draft.ts';
import type { Model } from './model.ts';
import { FULL_WORTH } from './worth.ts';

/** Share of a way from which it is taken at once; share of the players placed at least per round; chosen, not measured. */
const SURE = 0.75;
const STEP = 0.12;
const PIVOTS = 800;

function roomLeft(model: Model, draft: Draft, pool: Pool): Room {
  return {
    sizes: pool.first.map((_, kind) => pool.kinds.filter((other, p) => other === kind && !draft.isIn[p]).length),
    crowd: draft.crowdCount.map((count) => model.allowed - count),
    stretch: draft.stretchCount.map((count) => model.share - count),
  };
}

/** Puts one player of a kind in on this way, whoever of them it costs least; false where it would break a rule for all of them. */
function place(model: Model, draft: Draft, pool: Pool, kind: number, changes: readonly number[]): boolean {
  const before = draft.total;
  let chosen = -1;
  let least = CROWDED;
  for (let p = 0; p < pool.kinds.length; p++) {
    if (pool.kinds[p] !== kind || draft.isIn[p]) continue;
    put(model, draft, p, changes);
    const added = draft.total - before;
    take(model, draft, p);
    if (added < least) {
      least = added;
      chosen = p;
    }
  }
  if (chosen < 0) return false;
  put(model, draft, chosen, changes);
  return true;
}

/**
 * A whole plan from a fractional one: takes the ways with the largest share, solves the rest again in the room that is left, and so on.
 * @param start the fractional plan for everybody
 * @param chance shifts the order a little, so that another dive finds another plan
 */
export function dive(model: Model, pool: Pool, start: Relaxed, chance: () => number): Draft {
  const draft = emptyDraft(model);
  let relaxed = start;
  while (draft.isIn.includes(false)) {
    const left = draft.isIn.filter((isIn) => !isIn).length;
    const least = Math.max(1, Math.ceil(left * STEP));
    const ways = relaxed.taken.map((way) => ({ ...way, key: way.amount + 0.1 * chance() })).sort((a, b) => b.key - a.key);
    let placed = 0;
    for (const { kind, changes, amount } of ways) {
      for (let copy = 0; copy < Math.max(1, Math.floor(amount + 1 - SURE)); copy++) {
        if ((amount >= SURE || placed < least) && place(model, draft, pool, kind, changes)) placed++;
      }
    }
    if (placed === 0) {
      const at = priceAt(model, relaxed.prices);
      const player = draft.isIn.indexOf(false);
      put(model, draft, player, answerTo(model, draft, player, at));
    }
    if (draft.isIn.includes(false)) relaxed = relaxedPlan(model, FULL_WORTH, roomLeft(model, draft, pool), pool, PIVOTS);
  }
  return draft;
}
