import type { Draft } from './draft.ts';
import { put, restoreTo, take } from './draft.ts';
import type { Model } from './model.ts';

function swap(model: Model, draft: Draft, a: number, b: number): void {
  const [one, other] = [draft.changes[a]!, draft.changes[b]!];
  take(model, draft, a);
  take(model, draft, b);
  put(model, draft, a, other);
  put(model, draft, b, one);
}

/** Gives these ways to the players, one each, and exchanges two at a time for as long as that makes the draft cheaper: who sits where decides about desks and neighbours. */
export function seatWays(model: Model, draft: Draft, ways: readonly (readonly number[])[]): void {
  restoreTo(model, draft, ways);
  for (let before = Infinity; draft.total < before; ) {
    before = draft.total;
    for (let a = 0; a < ways.length; a++) {
      for (let b = a + 1; b < ways.length; b++) {
        const now = draft.total;
        swap(model, draft, a, b);
        if (draft.total >= now) swap(model, draft, a, b);
      }
    }
  }
}
