import fc from 'fast-check';
import type { Candidate, Choice } from '../../../../core/bowing/stagger/choice.ts';
import { costOfChoice } from '../../../../core/bowing/stagger/choice.ts';

/** Rows of every choice below. */
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

/** Small choices: up to five groups of up to six candidates. */
export const choices = fc.record({ groups: fc.array(group, { minLength: 1, maxLength: 5 }), rows: fc.array(row, { minLength: ROWS, maxLength: ROWS }) });

/** The least cost there is, by looking at every combination. */
export function leastOf(choice: Choice): number {
  let least = Infinity;
  const walk = (picked: number[]): void => {
    if (picked.length === choice.groups.length) least = Math.min(least, costOfChoice(choice, picked));
    else choice.groups[picked.length]!.forEach((_, c) => walk([...picked, c]));
  };
  walk([]);
  return least;
}
