import type { Chain } from '../../search/marginals.ts';
import type { Layer } from '../layers.ts';
import type { Context } from './context.ts';
import { placeSlots, stepSlots } from './score.ts';
import { Slots } from './slots.ts';
import { emptyStep } from './step.ts';
import type { Place } from '../frame.ts';

/** Hashed weights in hundredths, -127 to 127. */
export type Weights = Int8Array;

/** Potentials are sharpened by this before decoding; chosen on the training works. */
const SHARPEN = 1.3 / 100;

/** Sums weights of places and steps; holds only room to work in. */
export class Scorer {
  private readonly slots = new Slots();
  private readonly step = emptyStep();

  private readonly weights: Weights;
  private readonly contexts: readonly Context[];

  constructor(weights: Weights, contexts: readonly Context[]) {
    this.weights = weights;
    this.contexts = contexts;
  }

  place(note: number, place: Place): number {
    placeSlots(this.slots, this.contexts[note]!, place);
    return this.sum();
  }

  between(noteA: number, noteB: number, a: Place, b: Place): number {
    stepSlots(this.slots, this.step, this.contexts[noteA]!, this.contexts[noteB]!, a, b);
    return this.sum();
  }

  private sum(): number {
    let total = 0;
    for (let i = 0; i < this.slots.count; i += 1) total += this.weights[this.slots.at[i]!]!;
    return total * SHARPEN;
  }
}

function withinLayer(scorer: Scorer, layer: Layer, state: readonly Place[]): number {
  let total = 0;
  layer.notes.forEach((note, k) => {
    total += scorer.place(note, state[k]!);
    if (k > 0) total += scorer.between(layer.notes[k - 1]!, note, state[k - 1]!, state[k]!);
  });
  return total;
}

/** Steps from the last note of each state to the first note of the next; equal ends share one sum. */
function betweenLayers(scorer: Scorer, from: Layer, to: Layer): Float64Array {
  const result = new Float64Array(from.states.length * to.states.length);
  const known = new Map<Place, Map<Place, number>>();
  from.states.forEach((one, a) => {
    const last = one.at(-1)!;
    const row = known.get(last) ?? known.set(last, new Map<Place, number>()).get(last)!;
    to.states.forEach((other, b) => {
      const first = other[0]!;
      let value = row.get(first);
      if (value === undefined) {
        value = scorer.between(from.notes.at(-1)!, to.notes[0]!, last, first);
        row.set(first, value);
      }
      result[a * to.states.length + b] = value;
    });
  });
  return result;
}

/**
 * Log potentials of the fitted chain over layers: how a professional would weigh each way to hold a layer and each step to the next.
 * Inside a chord the notes are a chain of their own. O(notes x places^2). Higher is likelier; unit: natural log of a likelihood ratio, sharpened.
 */
export function fittedChain(weights: Weights, contexts: readonly Context[], layers: readonly Layer[]): Chain {
  const scorer = new Scorer(weights, contexts);
  return {
    states: layers.map((layer) => Float64Array.from(layer.states, (state) => withinLayer(scorer, layer, state))),
    steps: layers.map((layer, i) => (i === 0 ? new Float64Array(0) : betweenLayers(scorer, layers[i - 1]!, layer))),
  };
}
