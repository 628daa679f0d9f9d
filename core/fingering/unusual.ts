import type { Marginals } from '../search/marginals.ts';
import type { Layer } from './layers.ts';

/**
 * What a move of the hand left out and a move too many weigh beside one place otherwise. By itself a line is judged by where the hand moves, for a hand set
 * wrong is wrong through a whole passage; near a pin, which says where the hand is, step by step. Chosen on the training works.
 */
const MISSED = 6.4;
const NEEDLESS = 1.6;

const leaves = (layer: Layer): number[] => layer.states.map((state) => state.at(-1)!.position);
const arrives = (layer: Layer): number[] => layer.states.map((state) => state[0]!.position);

/**
 * How unusual each step from the layer before to layer `at` is, laid out as `marginals.steps[at]`: what professionals would be expected to do otherwise.
 * `byMoves`: where the hand moves is counted over all the ways it may move, for what matters is that it moves at all. Unit: expected differences, 0 and more.
 * Example: where nine in ten move the hand, staying costs nine tenths of a move left out.
 */
export function unusualSteps(layers: readonly Layer[], marginals: Marginals, at: number, byMoves: boolean): Float64Array {
  const likely = marginals.steps[at]!;
  if (!byMoves || at === 0) return likely.map((p) => 1 - p);
  const [from, to] = [leaves(layers[at - 1]!), arrives(layers[at]!)];
  const isMove = (step: number): boolean => from[Math.floor(step / to.length)] !== to[step % to.length];
  const moved = likely.reduce((sum, p, step) => sum + (isMove(step) ? p : 0), 0);
  return likely.map((_, step) => (isMove(step) ? NEEDLESS * (1 - moved) : MISSED * moved));
}
