import { describe, expect, it } from 'vitest';
import { build } from '../../../../core/bowing/stagger/search.ts';
import { chanceFrom } from '../../../../core/bowing/stagger/chance.ts';
import { emptyDraft, put } from '../../../../core/bowing/stagger/draft.ts';
import { modelOf } from '../../../../core/bowing/stagger/model.ts';
import { staggerSteps } from '../../../../core/bowing/stagger/plan.ts';
import { STAGGER_DEFAULTS } from '../../../../core/bowing/stagger/problem.ts';
import { rulesOnly } from '../../../../core/bowing/stagger/rulesOnly.ts';
import { problemOf } from '../../../bench/staggerProblems.ts';
import { brokenRules } from './hardRules.ts';
import { smallProblem } from './small.ts';

describe('a passage without costs', () => {
  it('costs nothing exactly where a plan holds every rule', () => {
    const held = new Set<boolean>();
    for (let seed = 0; seed < 40; seed++) {
      const problem = smallProblem(seed);
      const model = modelOf(problem, STAGGER_DEFAULTS);
      const bare = rulesOnly(model);
      const { changes } = build(model, chanceFrom(seed), new Float64Array(model.usable.length));
      const draft = emptyDraft(bare);
      changes.forEach((list, player) => put(bare, draft, player, list));
      const players = changes.map((list) => ({ changes: list.map((i) => model.usable[i]!), directions: Array.from({ length: list.length + 1 }, (_, k) => ((k % 2 === 0) === (problem.start === 'down') ? 'down' : 'up')) }));
      const holds = brokenRules(problem, players).length === 0;
      expect(draft.total === 0).toBe(holds);
      held.add(holds);
    }
    expect(held.size).toBe(2);
  });

  it('leads to a plan where the cheapest places leave no room for all (problem 27: 19 players, two at a time)', { timeout: 300_000 }, () => {
    const problem = problemOf(27);
    for (const { feasible, players } of staggerSteps(problem)) {
      if (!feasible) continue;
      expect(brokenRules(problem, players)).toEqual([]);
      return;
    }
    expect.unreachable('no plan was found');
  });
});
