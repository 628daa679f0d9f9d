import { cheapestPath } from './cheapestPath.ts';
import type { Entering } from './cheapestPath.ts';
import { EVENNESS } from './costs/evenness.ts';
import { NEIGHBOUR } from './costs/neighbour.ts';
import type { Draft } from './draft.ts';
import { CLASH } from './draft.ts';
import type { Model } from './model.ts';
import { sumOverWindows, sumsOf } from './windows.ts';

/**
 * The cheapest changes of a player who is out, given everybody who is in. Exact but for one thing: two changes of this player in the
 * same crowd window or stretch are priced as if each were alone (the draft's total is exact all the same).
 * @param price points added at each usable instant, to look elsewhere than the cheapest place
 */
export function answerTo(model: Model, draft: Draft, player: number, price: Float64Array): readonly number[] {
  const { strokes, change, partner, neighbours } = model.players[player]!;
  const { crowd, desk, stretch, allowed, share } = model;
  const crowded = sumOverWindows(crowd, Array.from(draft.crowdCount, (count) => (count >= allowed ? draft.crowding : 0)));
  const at = change.map((own, i) => own + crowded[i]! + (draft.stretchCount[stretch[i]!]! >= share ? EVENNESS : 0) + price[i]!);
  const entering: Entering[] = [];
  if (partner >= 0 && draft.isIn[partner]) {
    const taken = draft.changes[partner]!;
    for (const [i, j] of model.faraway) {
      if (taken.includes(i)) at[j]! += CLASH;
      if (taken.includes(j)) at[i]! += CLASH;
    }
    entering.push({ windows: desk, sums: sumsOf(Array.from(draft.inDesk[partner]!, (is) => is * CLASH)) });
  }
  const near = neighbours.filter((other) => draft.isIn[other]);
  if (near.length > 0) {
    const both = Array.from(draft.crowdCount, (_, w) => NEIGHBOUR * near.reduce((sum, other) => sum + draft.inCrowd[other]![w]!, 0));
    entering.push({ windows: crowd, sums: sumsOf(both) });
  }
  return cheapestPath(strokes, at, entering).changes;
}
