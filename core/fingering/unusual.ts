import type { Marginals } from '../search/marginals.ts';
import type { Layer } from './layers.ts';

/**
 * What a difference from professionals weighs beside one of place: another step, a move of the hand left out, a move too many. By itself a line is judged
 * by where the hand moves, for a hand set wrong is wrong through a whole passage; near a pin, which says where the hand is, note by note. Chosen on the
 * training works.
 */
const BY_MOVES = { step: 0, missed: 6.4, needless: 1.6 };
const BY_NOTES = { step: 1, missed: 0, needless: 0 };

const leaves = (layer: Layer): number[] => layer.states.map((state) => state.at(-1)!.position);
const arrives = (layer: Layer): number[] => layer.states.map((state) => state[0]!.position);

/**
 * How unusual each step from the layer before to layer `at` is, laid out as `marginals.steps[at]`: what professionals would be expected to do otherwise.
 * `byMoves`: where the hand moves is counted over all the ways it may move, for what matters is that it moves at all. Unit: expected differences, 0 and more.
 * Example: where nine in ten move the hand, staying costs nine tenths of a move left out.
 */
export function unusualSteps(layers: readonly Layer[], marginals: Marginals, at: number, byMoves: boolean): { steps: Float64Array; moves: Float64Array } {
  const likely = marginals.steps[at]!;
  const weigh = byMoves ? BY_MOVES : BY_NOTES;
  const steps = new Float64Array(likely.length);
  const moves = new Float64Array(likely.length);
  if (at === 0) return { steps, moves };
  const [from, to] = [leaves(layers[at - 1]!), arrives(layers[at]!)];
  let moved = 0;
  from.forEach((a, x) => to.forEach((b, y) => (moved += a === b ? 0 : likely[x * to.length + y]!)));
  const [staying, moving] = [weigh.missed * moved, weigh.needless * (1 - moved)];
  from.forEach((a, x) => to.forEach((b, y) => {
    const s = x * to.length + y;
    steps[s] = weigh.step * (1 - likely[s]!);
    moves[s] = a === b ? staying : moving;
  }));
  return { steps, moves };
}
