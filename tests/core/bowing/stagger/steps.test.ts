import { describe, expect, it } from 'vitest';
import { staggerPlan, staggerSteps } from '../../../../core/bowing/stagger/plan.ts';
import { STAGGER_DEFAULTS } from '../../../../core/bowing/stagger/problem.ts';
import { problemOf } from '../../../bench/staggerProblems.ts';
import { brokenRules } from './hardRules.ts';
import { smallProblem } from './small.ts';

const EFFORT = { rounds: 2, tries: 300, pivots: 2000, near: 0 };

describe('a staggered plan step by step', { timeout: 240_000 }, () => {
  it.each([1, 5, 33, 45])('is a whole plan each time, never dearer and never with a lower bound than before (problem %i)', (seed) => {
    const problem = problemOf(seed);
    const steps = [...staggerSteps(problem, STAGGER_DEFAULTS, EFFORT)];
    steps.forEach((step, k) => {
      expect(step.players).toHaveLength(problem.players.length);
      expect(step.feasible).toBe(brokenRules(problem, step.players).length === 0);
      expect(step.broken.length > 0).toBe(!step.feasible);
      expect(step.bound).toBeLessThanOrEqual(step.cost);
      const before = steps[k - 1];
      if (!before?.feasible) return;
      expect(step.cost).toBeLessThanOrEqual(before.cost);
      expect(step.bound).toBeGreaterThanOrEqual(before.bound);
    });
  });

  it('ends with the plan that comes at one go', () => {
    expect([...staggerSteps(problemOf(45), STAGGER_DEFAULTS, EFFORT)].at(-1)).toEqual(staggerPlan(problemOf(45), STAGGER_DEFAULTS, EFFORT));
  });

  it('gives whoever stops after the first step a whole plan that claims no bound', () => {
    for (const step of staggerSteps(smallProblem(1))) {
      expect(step.players.every(({ directions, changes }) => directions.length === changes.length + 1)).toBe(true);
      expect(step.bound).toBe(0);
      break;
    }
  });

  it('asks for no more once a plan costs what the bound says', () => {
    const steps = [...staggerSteps(problemOf(25))];
    expect(steps.findIndex(({ cost, bound }) => cost === bound)).toBe(steps.length - 1);
  });

  it('leaves a plan of many strokes where it is near the bound, and goes on where more is asked for', () => {
    const asked = (near: number) => [...staggerSteps(problemOf(16), STAGGER_DEFAULTS, { ...EFFORT, near })];
    const [left, goneOn] = [asked(0.03), asked(0)];
    const { cost, bound } = left.at(-1)!;
    expect(left.length).toBeLessThan(goneOn.length);
    expect(bound).toBeGreaterThanOrEqual(0.97 * cost);
    expect(bound).toBeLessThan(cost);
    expect(goneOn.at(-1)!.cost).toBeLessThan(cost);
  });

  it('goes on with few strokes however near the plan is', () => {
    const last = (near: number) => [...staggerSteps(smallProblem(2), STAGGER_DEFAULTS, { ...EFFORT, near })].at(-1);
    expect(last(0.5)).toEqual(last(0));
  });

  it('says that no plan is possible from the step that proves it on, and mends what it can', () => {
    const steps = [...staggerSteps(problemOf(15), STAGGER_DEFAULTS, EFFORT)];
    const from = steps.findIndex(({ provedInfeasible }) => provedInfeasible);
    expect(from).toBeGreaterThan(0);
    expect(steps.slice(from).every(({ provedInfeasible, feasible }) => provedInfeasible && !feasible)).toBe(true);
    expect(steps.at(-1)!.broken.length).toBeLessThan(steps[0]!.broken.length);
  });
});
