import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { costOfChoice } from '../../../../core/bowing/stagger/choice.ts';
import { choose } from '../../../../core/bowing/stagger/choose.ts';
import { choices, leastOf } from './choices.ts';

describe('choosing one candidate for each group', () => {
  it('costs as little as the best of all combinations', () => {
    fc.assert(fc.property(choices, (choice) => {
      const least = leastOf(choice);
      const found = choose(choice, choice.groups.map(() => 0), 5000);
      expect(found).toMatchObject({ cost: least, isProved: true });
      expect(costOfChoice(choice, found.picked)).toBe(least);
    }), { numRuns: 1000 });
  });
});
