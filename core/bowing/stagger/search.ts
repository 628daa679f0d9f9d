import { answerTo } from './answer.ts';
import type { Draft } from './draft.ts';
import { emptyDraft, put, take } from './draft.ts';
import type { Model } from './model.ts';

/** Players from 0 to `count` - 1 in chance order. */
function shuffled(count: number, chance: () => number): number[] {
  const order = Array.from({ length: count }, (_, p) => p);
  for (let i = order.length - 1; i > 0; i--) {
    const j = Math.floor(chance() * (i + 1));
    const moved = order[i]!;
    order[i] = order[j]!;
    order[j] = moved;
  }
  return order;
}

/** A plan built player by player in chance order, each taking the cheapest way left at these prices. */
export function build(model: Model, chance: () => number, price: Float64Array): Draft {
  const draft = emptyDraft(model);
  for (const player of shuffled(model.players.length, chance)) put(model, draft, player, answerTo(model, draft, player, price));
  return draft;
}

/** Players taken out at once, at most; share of tries that look at the prices; points of noise at most. All chosen by trying. */
const OUT = 8;
const GUIDED = 0.9;
const NOISE = 10;
/** The same while the search is warm, with the share of the prices paid at most and the noise in warmths. Chosen by trying. */
const WARM_OUT = 3;
const WARM_SHARE = 0.5;
const WARM_NOISE = 2;

/**
 * Makes a draft cheaper in place: takes a few players out, puts them back one by one on the cheapest way left, keeps what is no dearer, or while it is warm little dearer.
 * All but the last one put back pay part of the prices, so that they leave dear places to those who need them.
 * @param prices points of a change at each usable instant, from the lower bound
 * @param tries players taken out so often
 * @param good stops at this cost
 * @param warmth points a try may make the draft dearer by and still be kept, on an average (simulated annealing: Kirkpatrick, Gelatt and Vecchi, "Optimization
 * by Simulated Annealing", 1983): a way out of plans that no small step makes cheaper. The draft may be dearer in the end. 0: never.
 */
export function improve(model: Model, draft: Draft, prices: Float64Array, tries: number, good: number, chance: () => number, warmth = 0): void {
  const free = new Float64Array(prices.length);
  for (let attempt = 0; attempt < tries && draft.total > good; attempt++) {
    const before = draft.total;
    const out = shuffled(model.players.length, chance).slice(0, 1 + Math.floor(chance() * (warmth > 0 ? WARM_OUT : OUT)));
    const old = out.map((player) => draft.changes[player]!);
    for (const player of out) take(model, draft, player);
    const share = warmth > 0 ? WARM_SHARE * chance() : chance() < GUIDED ? chance() : 0;
    const noise = warmth > 0 ? WARM_NOISE * warmth : chance() < 0.5 ? 0 : NOISE * chance();
    out.forEach((player, i) => {
      const asked = i === out.length - 1 && i > 0 ? free : prices.map((price) => share * price + noise * chance());
      put(model, draft, player, answerTo(model, draft, player, asked));
    });
    if (draft.total > before - (warmth > 0 ? warmth * Math.log(chance() + Number.MIN_VALUE) : 0)) {
      for (const player of out) take(model, draft, player);
      out.forEach((player, i) => put(model, draft, player, old[i]!));
    }
  }
}
