import { describe, expect, it } from 'vitest';
import { chanceFrom } from '../../../../core/bowing/stagger/chance.ts';
import { emptyDraft, put } from '../../../../core/bowing/stagger/draft.ts';
import { modelOf } from '../../../../core/bowing/stagger/model.ts';
import { STAGGER_DEFAULTS } from '../../../../core/bowing/stagger/problem.ts';
import { build } from '../../../../core/bowing/stagger/search.ts';
import { isCrowded, squeeze } from '../../../../core/bowing/stagger/squeeze.ts';
import { problemOf } from '../../../bench/staggerProblems.ts';
import { brokenRules } from './hardRules.ts';
import { instantsOf, playersOf } from './small.ts';

describe('a crowded passage', () => {
  it('is one in which seven of ten changes there is room for are made', () => {
    // Ten instants further apart than the window, one change each: room for ten.
    const model = modelOf({ instants: instantsOf(10, 0.4), duration: 4.4, players: playersOf(8, 6, 4), start: 'down', end: null }, STAGGER_DEFAULTS);
    const made = (count: number) => Array.from({ length: 8 }, (_, p) => (p < count ? [p] : []));
    expect([6, 7].map((count) => isCrowded(model, made(count)))).toEqual([false, true]);
    // Half as far apart two neighbouring instants share a window: room for five.
    const dense = modelOf({ instants: instantsOf(10, 0.2), duration: 2.2, players: playersOf(8, 6, 4), start: 'down', end: null }, STAGGER_DEFAULTS);
    expect([3, 4].map((count) => isCrowded(dense, made(count)))).toEqual([false, true]);
  });
});

describe('looking for plans by way of plans that crowd', () => {
  const problem = problemOf(2);
  const model = modelOf(problem, STAGGER_DEFAULTS);
  const free = new Float64Array(model.usable.length);
  const start = build(model, chanceFrom(1), free).changes;
  const steps = [...squeeze(model, start, free, 40, chanceFrom(2))];
  const brokenIn = (plan: readonly (readonly number[])[]) =>
    brokenRules(problem, plan.map((list) => ({ changes: list.map((i) => model.usable[i]!), directions: Array.from({ length: list.length + 1 }, (_, k) => ((k % 2 === 0) === (problem.start === 'down') ? 'down' : 'up')) })));

  it('passes through plans that crowd and through others, but never breaks another rule', () => {
    const broken = steps.map(brokenIn);
    expect(new Set(broken.flat())).toEqual(new Set(['crowd']));
    expect(broken.some((rules) => rules.length === 0)).toBe(true);
  });

  it('changes how often players change', () => {
    const counts = (plan: readonly (readonly number[])[]) => plan.map((list) => list.length).join();
    expect(new Set(steps.map(counts)).size).toBeGreaterThan(1);
  });

  it('comes out with less than it began with', () => {
    const pointsOf = (plan: readonly (readonly number[])[]) => {
      const draft = emptyDraft(model);
      plan.forEach((list, player) => put(model, draft, player, list));
      return draft.total;
    };
    expect(pointsOf(steps.at(-1)!)).toBeLessThan(pointsOf(start));
  });
});
