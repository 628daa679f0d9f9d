import { answerTo } from './answer.ts';
import type { Draft } from './draft.ts';
import { emptyDraft, put } from './draft.ts';
import type { Model } from './model.ts';

/** Points for each second away from the player's own turn: enough to outweigh every cost but a broken rule; chosen, not measured. */
const OFF_TURN = 1000;

/**
 * A plan in which the section changes in turns, one after the other at even distances, desk partners half a turn apart.
 * For crowded passages, where cheap places taken one by one leave no room for the last players.
 * @param turn seconds between two changes of one player, more than 0
 */
export function rotate(model: Model, turn: number): Draft {
  const { instants, players } = model.problem;
  const draft = emptyDraft(model);
  const order = players.map((_, p) => p).sort((a, b) => Number(players[a]!.seat === 'inside') - Number(players[b]!.seat === 'inside') || players[a]!.desk - players[b]!.desk);
  order.forEach((player, rank) => {
    const phase = ((rank + 0.5) * turn) / players.length;
    const price = Float64Array.from(model.usable, (i) => {
      const off = (((instants[i]!.time - phase) % turn) + turn) % turn;
      return OFF_TURN * Math.min(off, turn - off);
    });
    put(model, draft, player, answerTo(model, draft, player, price));
  });
  return draft;
}
