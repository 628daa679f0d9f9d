import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { directionsOf } from '../../../../core/bowing/stagger/broken.ts';
import { staggerPlan } from '../../../../core/bowing/stagger/plan.ts';
import { STAGGER_DEFAULTS } from '../../../../core/bowing/stagger/problem.ts';
import type { StaggerPlayer } from '../../../../core/bowing/stagger/problem.ts';
import { problemOf } from '../../../bench/staggerProblems.ts';
import { brokenRules } from './hardRules.ts';
import { canGoOneByOne } from './oneByOne.ts';
import { instantsOf, playersOf } from './small.ts';

const EFFORT = { rounds: 1, tries: 100, pivots: 1000, near: 0 };

describe('a passage the planner says cannot be played', () => {
  it.each([8, 15, 50])('has no order of changes at all in which one at a time changes (problem %i)', (seed) => {
    const problem = problemOf(seed);
    const { feasible, provedInfeasible, broken } = staggerPlan(problem, STAGGER_DEFAULTS, EFFORT);
    expect({ feasible, provedInfeasible, canGo: canGoOneByOne(problem) }).toEqual({ feasible: false, provedInfeasible: true, canGo: false });
    expect(broken.length).toBeGreaterThan(0);
  });

  it('asks for more changes than its instants hold, four at each (problem 48)', () => {
    const { instants, duration, players, start, end } = problemOf(48);
    // Nobody's bow lasts, so everybody changes, and twice to come out as they began.
    expect(players.every(({ limit }) => limit < duration)).toBe(true);
    expect(end).toBe(start);
    expect(2 * players.length).toBeGreaterThan(4 * instants.length);
    expect(Math.floor(players.length / 8)).toBe(4);
    expect(staggerPlan(problemOf(48), STAGGER_DEFAULTS, EFFORT).provedInfeasible).toBe(true);
  });
});

describe('trying every order', () => {
  it('finds one exactly where one of all sets of changes holds the rules, for players who share no desk', () => {
    const gaps = fc.array(fc.integer({ min: 1, max: 6 }), { minLength: 1, maxLength: 5 });
    const limits = fc.array(fc.integer({ min: 3, max: 20 }), { minLength: 1, maxLength: 3 });
    const seen = new Set<boolean>();
    fc.assert(fc.property(gaps, limits, fc.constantFrom('down' as const, 'up' as const, null), (steps, tenths, end) => {
      const instants = steps.map((_, i) => ({ time: steps.slice(0, i + 1).reduce((a, b) => a + b, 0) / 10, onBarline: false, onBeat: false, subdivision: i, weight: 0 }));
      const players = tenths.map((tenth, p): StaggerPlayer => ({ id: String(p), desk: 2 * p + 1, seat: 'outside', limit: tenth / 10, comfortable: 1, shifts: [] }));
      const problem = { instants, duration: instants.at(-1)!.time + 0.3, players, start: 'down' as const, end };
      const sets = Array.from({ length: 2 ** instants.length }, (_, set) => instants.flatMap((_, i) => ((set >> i) & 1 ? [i] : [])));
      const planOf = (changes: readonly number[]) => ({ changes, directions: directionsOf('down', changes.length) });
      const ways = players.map((player) => sets.filter((set) => brokenRules({ ...problem, players: [player] }, [planOf(set)]).length === 0));
      const walk = (plan: readonly (readonly number[])[]): boolean =>
        plan.length === players.length ? brokenRules(problem, plan.map(planOf)).length === 0 : ways[plan.length]!.some((way) => walk([...plan, way]));
      const isThere = walk([]);
      seen.add(isThere);
      expect(canGoOneByOne(problem)).toBe(isThere);
    }), { numRuns: 300 });
    expect(seen.size).toBe(2);
  });

  it('finds one for three players at three places within their bow, and none at two', () => {
    const held = (count: number) => canGoOneByOne({ instants: instantsOf(count, 1), duration: 4.5, players: playersOf(3, 4, 3), start: 'down', end: 'up' });
    expect([3, 2].map(held)).toEqual([true, false]);
  });
});
