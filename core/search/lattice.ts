/**
 * Layers of states with a cost on every state and on every step between neighbouring layers; Infinity forbids.
 * `steps[i]` leads from layer i-1 to i, row by row (`a * width + b`, width the size of layer i); `steps[0]` is empty.
 */
export interface Lattice {
  states: Float64Array[];
  steps: Float64Array[];
}

export interface Path {
  /** Index of the state taken in each layer. */
  states: number[];
  cost: number;
}

/** What a path costs: its states and the steps between them. Infinity where it uses something forbidden. */
export function pathCost(lattice: Lattice, states: readonly number[]): number {
  return states.reduce((total, state, i) => {
    const step = i === 0 ? 0 : lattice.steps[i]![states[i - 1]! * lattice.states[i]!.length + state]!;
    return total + step + lattice.states[i]![state]!;
  }, 0);
}
