/** Log potentials of a chain, laid out as a lattice: higher is likelier, -Infinity is impossible. */
export interface Chain {
  states: Float64Array[];
  steps: Float64Array[];
}

/** How likely each state, and each step between neighbours, is over all paths. Messages are kept so that a change can be worked in. */
export interface Marginals {
  states: Float64Array[];
  steps: Float64Array[];
  forward: Float64Array[];
  backward: Float64Array[];
}

const SAME = 1e-12;

function normalise(values: Float64Array): Float64Array {
  let total = 0;
  for (const value of values) total += value;
  if (total > 0) for (let i = 0; i < values.length; i += 1) values[i]! /= total;
  return values;
}

function exponentials(values: Float64Array): Float64Array {
  let top = -Infinity;
  for (const value of values) if (value > top) top = value;
  return values.map((value) => (top === -Infinity ? 0 : Math.exp(value - top)));
}

/** Step potentials as factors: the costly part, computed once for a chain whose states are then pinned in many ways. */
export function stepFactors(chain: Chain): Float64Array[] {
  return chain.steps.map(exponentials);
}

const equal = (a: Float64Array, b: Float64Array): boolean => a.every((value, i) => Math.abs(value - b[i]!) < SAME);

/**
 * Probabilities of states and steps, by the forward-backward sums. Where `changed` is given (states of the layers `from` to `to`) only layers that the
 * change reaches beyond 1e-12 are computed again, and `span` tells which. O(layers x states^2). Invariant: each layer adds to 1. Oracle: sums over all paths.
 */
export function marginalsOf(chain: Chain, factors: Float64Array[], changed?: { from: number; to: number; before: Marginals }): Marginals & { span: { from: number; to: number } } {
  const n = chain.states.length;
  const copy = (layers?: Float64Array[]): Float64Array[] => (layers ? [...layers] : Array<Float64Array>(n));
  const [forward, backward] = [copy(changed?.before.forward), copy(changed?.before.backward)];
  const span = { from: 0, to: n - 1 };
  const local = new Map<number, Float64Array>();
  const factor = (i: number): Float64Array => local.get(i) ?? local.set(i, exponentials(chain.states[i]!)).get(i)!;
  for (let i = changed?.from ?? 0; i < n; i += 1) {
    const values = Float64Array.from(factor(i));
    if (i > 0) {
      const [before, size] = [forward[i - 1]!, values.length];
      for (let b = 0; b < size; b += 1) {
        let sum = 0;
        for (let a = 0; a < before.length; a += 1) sum += before[a]! * factors[i]![a * size + b]!;
        values[b]! *= sum;
      }
    }
    normalise(values);
    const settled = changed !== undefined && i > changed.to && equal(values, forward[i]!);
    forward[i] = values;
    span.to = i;
    if (settled) break;
  }
  const last = changed ? Math.max(0, changed.to - 1) : n - 1;
  if (!changed && n > 0) backward[n - 1] = new Float64Array(chain.states[n - 1]!.length).fill(1);
  for (let i = changed ? last : n - 2; i >= 0 && i < n - 1; i -= 1) {
    const [here, there] = [chain.states[i]!.length, chain.states[i + 1]!.length];
    const values = new Float64Array(here);
    const weighed = factor(i + 1).map((value, b) => value * backward[i + 1]![b]!);
    for (let a = 0; a < here; a += 1) {
      let sum = 0;
      for (let b = 0; b < there; b += 1) sum += factors[i + 1]![a * there + b]! * weighed[b]!;
      values[a] = sum;
    }
    normalise(values);
    const settled = changed !== undefined && i < changed.from && equal(values, backward[i]!);
    backward[i] = values;
    span.from = i;
    if (settled) break;
  }
  if (changed && changed.to === 0) span.from = 0;
  return { ...probabilities(), forward, backward, span };

  function probabilities(): { states: Float64Array[]; steps: Float64Array[] } {
    const [states, steps] = [copy(changed?.before.states), copy(changed?.before.steps)];
    for (let i = span.from; i <= Math.min(n - 1, span.to + 1); i += 1) {
      states[i] = normalise(forward[i]!.map((value, b) => value * backward[i]![b]!));
      if (i === 0) {
        steps[0] = new Float64Array(0);
        continue;
      }
      const [before, size] = [forward[i - 1]!, forward[i]!.length];
      const joint = new Float64Array(before.length * size);
      const weighed = factor(i).map((value, b) => value * backward[i]![b]!);
      for (let a = 0; a < before.length; a += 1) for (let b = 0; b < size; b += 1) joint[a * size + b] = before[a]! * factors[i]![a * size + b]! * weighed[b]!;
      steps[i] = normalise(joint);
    }
    return { states, steps };
  }
}
