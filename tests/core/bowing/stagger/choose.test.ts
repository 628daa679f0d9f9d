import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { Candidate } from '../../../../core/bowing/stagger/choice.ts';
import { costOfChoice } from '../../../../core/bowing/stagger/choice.ts';
import { choose } from '../../../../core/bowing/stagger/choose.ts';

const ROWS = 5;
const candidate = fc.record({ cost: fc.nat(30), uses: fc.uniqueArray(fc.nat(ROWS - 1), { maxLength: 3 }), twice: fc.boolean() }).map(({ cost, uses, twice }): Candidate => ({
  cost,
  rows: Int32Array.from(uses),
  values: Float64Array.from(uses, (_, k) => (twice && k === 0 ? 2 : 1)),
  features: Int32Array.from(uses.flatMap((row, k) => (twice && k === 0 ? [row, row + ROWS] : [row]))),
}));
/** Candidates of a group that are made of the same things at another cost cannot be told apart: only the cheapest is given. */
const group = fc.array(candidate, { minLength: 1, maxLength: 6 }).map((list) => {
  const cheapest = new Map<string, Candidate>();
  for (const one of list) {
    const key = [...one.features].sort().join();
    if (!cheapest.has(key) || one.cost < cheapest.get(key)!.cost) cheapest.set(key, one);
  }
  return [...cheapest.values()];
});
const row = fc.record({ room: fc.integer({ min: 0, max: 3 }), over: fc.constantFrom(5, 100) });

describe('choosing one candidate for each group', () => {
  it('costs as little as the best of all combinations', () => {
    fc.assert(fc.property(fc.array(group, { minLength: 1, maxLength: 5 }), fc.array(row, { minLength: ROWS, maxLength: ROWS }), (groups, rows) => {
      const choice = { groups, rows };
      const known = groups.map(() => 0);
      let least = Infinity;
      const walk = (picked: number[]): void => {
        if (picked.length === groups.length) least = Math.min(least, costOfChoice(choice, picked));
        else groups[picked.length]!.forEach((_, c) => walk([...picked, c]));
      };
      walk([]);
      const found = choose(choice, known, 5000);
      expect(found).toMatchObject({ cost: least, isProved: true });
      expect(costOfChoice(choice, found.picked)).toBe(least);
    }), { numRuns: 1000 });
  });
});
