import { describe, expect, it } from 'vitest';
import { bowChangeAudibility } from '../../../../core/bowing/dip.ts';
import { planLevel } from '../../../../core/bowing/stagger/level.ts';
import { instantsOf, playersOf } from './small.ts';

const problem = { instants: instantsOf(19, 0.4), duration: 8, players: playersOf(12, 6, 4), start: 'down' as const, end: null };
const apart = playersOf(12, 6, 4).map((_, p) => [p]);

describe('the level of a planned section', () => {
  it('falls by one player at a time where all change apart, by all where they change together', () => {
    expect(planLevel(problem, apart).worst).toBeCloseTo(bowChangeAudibility([1], 12).dL, 3);
    expect(planLevel(problem, apart.map(() => [9])).worst).toBeCloseTo(bowChangeAudibility(new Array<number>(12).fill(1), 12).dL, 6);
  });

  it('is full where nobody changes, and its curve reaches the worst moment', () => {
    const { curve, worst } = planLevel(problem, [[4], ...apart.slice(1).map(() => [])]);
    expect(curve.map(({ time }) => time).filter((time) => time < 1.5)).toEqual([0]);
    expect(Math.max(...curve.map(({ dip }) => dip))).toBeCloseTo(worst, 3);
    expect([curve[0]!.dip, curve.at(-1)!.dip]).toEqual([0, 0].map(() => expect.closeTo(0, 6) as number));
  });

  it('has no dip without changes', () => {
    expect(planLevel(problem, problem.players.map(() => []))).toEqual({ worst: 0, curve: [{ time: 0, dip: 0 }, { time: 8, dip: 0 }] });
  });
});
