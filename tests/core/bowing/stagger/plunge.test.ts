import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { chanceFrom } from '../../../../core/bowing/stagger/chance.ts';
import { costOfChoice } from '../../../../core/bowing/stagger/choice.ts';
import { plunge } from '../../../../core/bowing/stagger/plunge.ts';
import { choices, leastOf } from './choices.ts';

describe('a plunge for a cheap choice', () => {
  it('is never dearer than what is known, never cheaper than the best of all combinations, and costs what it says', () => {
    fc.assert(fc.property(choices, fc.nat(99), (choice, seed) => {
      const known = choice.groups.map(() => 0);
      const { picked, cost } = plunge(choice, known, 0.1, chanceFrom(seed), 40);
      expect(cost).toBe(costOfChoice(choice, picked));
      expect(cost).toBeLessThanOrEqual(costOfChoice(choice, known));
      expect(cost).toBeGreaterThanOrEqual(leastOf(choice));
    }), { numRuns: 500 });
  });

  it('finds the best of all combinations in nine of ten small choices', () => {
    const drawn = fc.sample(choices, { numRuns: 300, seed: 1 });
    const best = drawn.filter((choice) => plunge(choice, choice.groups.map(() => 0), 0, chanceFrom(1), 40).cost === leastOf(choice));
    expect(best.length).toBeGreaterThanOrEqual(270);
  });

  it('leaves a choice that really costs more than its rows say to the judge, and names it', () => {
    const candidate = (cost: number, feature: number) => ({ cost, rows: Int32Array.of(), values: Float64Array.of(), features: Int32Array.of(feature) });
    const choice = { groups: [[candidate(9, 0), candidate(1, 1)]], rows: [], judge: ([first]: readonly number[]) => (first === 1 ? 50 : 9) };
    expect(plunge(choice, [0], 0, chanceFrom(1), 10)).toMatchObject({ picked: [0], cost: 9, misjudged: [1] });
  });
});
