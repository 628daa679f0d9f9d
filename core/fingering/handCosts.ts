import type { Lattice } from '../search/lattice.ts';
import type { Place } from './frame.ts';
import type { Layer } from './layers.ts';
import type { LineNote } from './line.ts';
import type { Player } from './steps/player.ts';
import { handStep, type HandStep } from './steps/step.ts';
import { timingBetween, type StepTiming } from './steps/timing.ts';
import { TERMS, type TermKey, type TermWeights } from './terms/all.ts';
import type { Term } from './terms/term.ts';

export interface Setting {
  player: Player;
  line: readonly LineNote[];
  /** Quarters a minute. */
  tempo: number;
}

const weighed = (weights: TermWeights): { term: Term; weight: number }[] =>
  (Object.keys(TERMS) as TermKey[]).filter((key) => weights[key]).map((key) => ({ term: TERMS[key], weight: weights[key]! }));

/** The places that follow each other along the line of steps: the last note of one layer, the first of the next. */
export function stepBetween(setting: Setting, from: Layer, to: Layer, a: readonly Place[], b: readonly Place[]): { step: HandStep; timing: StepTiming; first: Place; second: Place } {
  const timing = timingBetween(setting.line[from.notes.at(-1)!]!, setting.line[to.notes[0]!]!, setting.tempo);
  const [first, second] = [a.at(-1)!, b[0]!];
  return { step: handStep(setting.player, first, second, timing), timing, first, second };
}

/** What each term costs, weighed, for holding a layer. */
export function placeCosts(setting: Setting, weights: TermWeights, layer: Layer, state: readonly Place[], add: (name: string, cost: number) => void): void {
  for (const { term, weight } of weighed(weights)) {
    if (!term.place) continue;
    state.forEach((place, k) => {
      const note = setting.line[layer.notes[k]!]!;
      add(term.name, weight * term.place!(setting.player, place, (note.duration * 60) / setting.tempo, note));
    });
  }
}

/** What each term costs, weighed, for the step between two layers. */
export function stepCosts(setting: Setting, weights: TermWeights, from: Layer, to: Layer, a: readonly Place[], b: readonly Place[], add: (name: string, cost: number) => void): void {
  const { step, timing, first, second } = stepBetween(setting, from, to, a, b);
  for (const { term, weight } of weighed(weights)) if (term.step) add(term.name, weight * term.step(setting.player, step, first, second, timing));
}

/** The hand's costs as a lattice over the layers; zero everywhere where no term is weighed. */
export function handLattice(setting: Setting, weights: TermWeights, layers: readonly Layer[]): Lattice {
  const none = weighed(weights).length === 0;
  const sum = (collect: (add: (name: string, cost: number) => void) => void): number => {
    let total = 0;
    collect((_name, cost) => (total += cost));
    return total;
  };
  return {
    states: layers.map((layer) => Float64Array.from(layer.states, (state) => (none ? 0 : sum((add) => placeCosts(setting, weights, layer, state, add))))),
    steps: layers.map((layer, i) => {
      const before = layers[i - 1];
      if (!before) return new Float64Array(0);
      const costs = new Float64Array(before.states.length * layer.states.length);
      if (none) return costs;
      before.states.forEach((a, x) => layer.states.forEach((b, y) => (costs[x * layer.states.length + y] = sum((add) => stepCosts(setting, weights, before, layer, a, b, add)))));
      return costs;
    }),
  };
}
