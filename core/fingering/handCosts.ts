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

interface Weighed {
  term: Term;
  weight: number;
}

const weighed = (weights: TermWeights): Weighed[] =>
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

/**
 * The hand's costs as a lattice over the layers; zero where no term is weighed, or none has anything to say of the time between two layers.
 * Oracle: the sums of `placeCosts` and `stepCosts`.
 */
export function handLattice(setting: Setting, weights: TermWeights, layers: readonly Layer[]): Lattice {
  const terms = weighed(weights);
  const places = terms.filter(({ term }) => term.place !== undefined);
  return {
    states: layers.map((layer) => {
      if (places.length === 0) return new Float64Array(layer.states.length);
      return Float64Array.from(layer.states, (state) => {
        let total = 0;
        placeCosts(setting, weights, layer, state, (_name, cost) => (total += cost));
        return total;
      });
    }),
    steps: layers.map((layer, i) => stepsBetween(setting, terms, layers[i - 1], layer)),
  };
}

/** What every step from one layer to the next costs, row by row. */
function stepsBetween({ player, line, tempo }: Setting, terms: readonly Weighed[], before: Layer | undefined, layer: Layer): Float64Array {
  if (before === undefined) return new Float64Array(0);
  const width = layer.states.length;
  const costs = new Float64Array(before.states.length * width);
  const timing = timingBetween(line[before.notes.at(-1)!]!, line[layer.notes[0]!]!, tempo);
  const speaking = terms.filter(({ term }) => term.step !== undefined && (term.applies?.(timing) ?? true));
  if (speaking.length === 0) return costs;
  for (let x = 0; x < before.states.length; x += 1) {
    const first = before.states[x]!.at(-1)!;
    for (let y = 0; y < width; y += 1) {
      const second = layer.states[y]![0]!;
      const step = handStep(player, first, second, timing);
      let total = 0;
      for (const { term, weight } of speaking) total += weight * term.step!(player, step, first, second, timing);
      costs[x * width + y] = total;
    }
  }
  return costs;
}
