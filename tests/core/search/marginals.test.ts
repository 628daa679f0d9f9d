import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { marginalsOf, stepFactors, type Chain } from '../../../core/search/marginals.ts';
import { everyPath } from './everyPath.ts';

const potential = fc.double({ min: -3, max: 3, noNaN: true });
const chains: fc.Arbitrary<Chain> = fc.array(fc.integer({ min: 1, max: 4 }), { minLength: 1, maxLength: 5 }).chain((sizes) =>
  fc.record({
    states: fc.tuple(...sizes.map((size) => fc.array(potential, { minLength: size, maxLength: size }).map((values) => Float64Array.from(values)))),
    steps: fc.tuple(...sizes.map((size, i) => { const n = i === 0 ? 0 : size * sizes[i - 1]!; return fc.array(potential, { minLength: n, maxLength: n }).map((values) => Float64Array.from(values)); })),
  }),
);

/** Probabilities of states by adding up all paths. */
function summed(chain: Chain): number[][] {
  const sums = chain.states.map((values) => Array<number>(values.length).fill(0));
  let total = 0;
  for (const { states, cost } of everyPath(chain)) {
    total += Math.exp(cost);
    states.forEach((state, i) => (sums[i]![state]! += Math.exp(cost)));
  }
  return sums.map((layer) => layer.map((value) => value / total));
}

describe('probabilities of a chain', () => {
  it('are those of adding up every path', () => {
    fc.assert(fc.property(chains, (chain) => {
      const { states } = marginalsOf(chain, stepFactors(chain));
      summed(chain).forEach((layer, i) => layer.forEach((p, s) => expect(states[i]![s]!).toBeCloseTo(p, 9)));
    }), { numRuns: 200 });
  });

  it('after a change are those of the changed chain from the start', () => {
    fc.assert(fc.property(chains, fc.nat(), fc.nat(), fc.nat(), (chain, layer, more, state) => {
      const from = layer % chain.states.length;
      const to = from + (more % (chain.states.length - from));
      const changed = { ...chain, states: chain.states.map((values, i) => (i >= from && i <= to ? values.map((_, s) => (s === state % values.length ? 0.5 : i === from ? -Infinity : -1)) : values)) };
      const factors = stepFactors(chain);
      const again = marginalsOf(changed, factors, { from, to, before: marginalsOf(chain, factors) });
      const anew = marginalsOf(changed, factors);
      anew.states.forEach((values, i) => values.forEach((p, s) => expect(again.states[i]![s]!).toBeCloseTo(p, 9)));
      anew.steps.forEach((values, i) => values.forEach((p, s) => expect(again.steps[i]![s]!).toBeCloseTo(p, 9)));
    }), { numRuns: 200 });
  });
});
