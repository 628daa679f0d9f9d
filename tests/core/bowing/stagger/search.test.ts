import { describe, expect, it } from 'vitest';
import { chanceFrom } from '../../../../core/bowing/stagger/chance.ts';
import { CROWDED, emptyDraft, put } from '../../../../core/bowing/stagger/draft.ts';
import { modelOf } from '../../../../core/bowing/stagger/model.ts';
import { STAGGER_DEFAULTS } from '../../../../core/bowing/stagger/problem.ts';
import { build, improve } from '../../../../core/bowing/stagger/search.ts';
import { problemOf } from '../../../bench/staggerProblems.ts';

const model = modelOf(problemOf(13), STAGGER_DEFAULTS);
const free = new Float64Array(model.usable.length);
const drafted = (tries: readonly (readonly [tries: number, warmth: number])[]) => {
  const chance = chanceFrom(3);
  const draft = build(model, chance, free);
  const totals = tries.map(([count, warmth]) => {
    improve(model, draft, free, count, 0, chance, warmth);
    return draft.total;
  });
  return { draft, totals };
};

describe('mending a plan player by player', () => {
  it('never makes a plan dearer while it is cold, and now and then does while it is warm', () => {
    const steps = (warmth: number) => drafted([[2000, 0], ...Array.from({ length: 40 }, () => [1, warmth] as const)]).totals;
    const rises = (totals: readonly number[]) => totals.filter((total, k) => k > 0 && total > totals[k - 1]!).length;
    expect(rises(steps(0))).toBe(0);
    expect(rises(steps(5))).toBeGreaterThan(0);
  });

  it('breaks no rule for being warm, and its points are those of the plan put in afresh', () => {
    const { draft, totals } = drafted([[2000, 0], [500, 2.5]]);
    expect(totals[0]).toBeLessThan(CROWDED);
    expect(totals[1]).toBeLessThan(CROWDED);
    const fresh = emptyDraft(model);
    draft.changes.forEach((list, player) => put(model, fresh, player, list));
    expect(draft.total).toBe(fresh.total);
  });
});
