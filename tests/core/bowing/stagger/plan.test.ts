import { describe, expect, it } from 'vitest';
import { staggerPlan } from '../../../../core/bowing/stagger/plan.ts';
import type { StaggerProblem } from '../../../../core/bowing/stagger/problem.ts';
import { problemOf } from '../../../bench/staggerProblems.ts';
import { brokenRules } from './hardRules.ts';
import { certify } from './mip.ts';
import { instantsOf, playersOf, smallProblem } from './small.ts';

const pedal = (changes: Partial<StaggerProblem>): StaggerProblem => ({ instants: instantsOf(19, 0.4), duration: 8, players: playersOf(8, 6, 4), start: 'down', end: 'up', ...changes });

describe('a staggered plan', { timeout: 240_000 }, () => {
  it.each(Array.from({ length: 24 }, (_, seed) => seed))('costs what HiGHS proves to be the least, or says with it that no plan exists (small problem %i)', async (seed) => {
    const problem = smallProblem(seed);
    const plan = staggerPlan(problem);
    const certificate = await certify(problem, 60);
    expect(certificate.status).not.toBe('open');
    expect(plan.feasible).toBe(certificate.status === 'proved');
    if (!plan.feasible) return;
    expect(plan.cost).toBe(certificate.cost);
    expect(plan.bound).toBeLessThanOrEqual(certificate.cost);
  });

  it.each([0, 2, 11, 12])('holds every hard rule by an independent reading of them (problem %i)', (seed) => {
    const problem = problemOf(seed);
    const plan = staggerPlan(problem);
    expect(plan.feasible).toBe(true);
    expect(brokenRules(problem, plan.players)).toEqual([]);
    expect(plan.bound).toBeLessThanOrEqual(plan.cost);
    expect(Object.values(plan.terms).reduce((all, points) => all + points, 0)).toBe(plan.cost);
  });

  it('is the same every time', () => {
    expect(staggerPlan(smallProblem(3))).toEqual(staggerPlan(smallProblem(3)));
  });

  it('changes on no barline and no beat where there is room between them', () => {
    const { terms } = staggerPlan(pedal({ instants: instantsOf(19, 0.4, 4), players: playersOf(4, 6, 4) }));
    expect([terms.barline, terms.beat]).toEqual([0, 0]);
  });

  it('puts a change on a shift of one\'s own and never on the partner\'s', () => {
    const [a, b] = playersOf(2, 6, 4);
    const plan = staggerPlan(pedal({ players: [{ ...a!, shifts: [8] }, { ...b!, shifts: [10] }] }));
    expect(plan.players.map(({ changes }) => changes)).toEqual([[8], [10]]);
  });

  it('plays with no change at all where one bow lasts', () => {
    expect(staggerPlan(pedal({ players: playersOf(2, 9, 8), end: 'down' })).players.map(({ directions }) => directions)).toEqual([['down'], ['down']]);
  });

  it('needs nobody at the same desk: an odd last desk and absent players', () => {
    const problem = pedal({ players: playersOf(7, 6, 4).filter(({ id }) => id !== '2i') });
    expect(brokenRules(problem, staggerPlan(problem).players)).toEqual([]);
  });

  it('never changes at the start or the end of the passage, even where an instant stands there', () => {
    const instants = [{ time: 0, onBarline: false, onBeat: false, subdivision: 'a', weight: 0 }, { time: 4, onBarline: true, onBeat: true, subdivision: 'b', weight: 1 }, { time: 8, onBarline: false, onBeat: false, subdivision: 'c', weight: 0 }];
    expect(staggerPlan(pedal({ instants, players: playersOf(1, 6, 4) })).players[0]!.changes).toEqual([1]);
  });

  it('keeps partners off one subdivision even where its instants lie far apart', () => {
    const instants = instantsOf(4, 1.6, 100).map((instant, i) => ({ ...instant, subdivision: i === 1 || i === 2 ? 'same' : i }));
    const problem = pedal({ instants, players: playersOf(2, 6.5, 4) });
    expect(brokenRules(problem, staggerPlan(problem).players)).toEqual([]);
  });
});

describe('when the rules cannot all hold', { timeout: 240_000 }, () => {
  it('says how much longer than a bow the gap between two places to change is', () => {
    const { feasible, broken } = staggerPlan(pedal({ instants: instantsOf(1, 1), players: playersOf(1, 5, 4) }));
    expect(feasible).toBe(false);
    expect(broken).toMatchObject([{ rule: 'limit', players: ['1o'], time: 1, by: 2 }]);
  });

  it('says that the wanted direction cannot come out where there is no place to change', () => {
    expect(staggerPlan(pedal({ instants: [], players: playersOf(1, 9, 8) })).broken).toMatchObject([{ rule: 'end', players: ['1o'], by: 1 }]);
  });

  it('says how many more change at once than may, with the fewest possible', () => {
    const { broken } = staggerPlan(pedal({ instants: instantsOf(1, 4), players: playersOf(3, 6, 4).filter(({ id }) => id !== '1i') }));
    expect(broken).toMatchObject([{ rule: 'crowd', by: 1, time: 4 }]);
  });

  it('names the two partners who come too close, and by how much', () => {
    const { broken } = staggerPlan(pedal({ instants: instantsOf(2, 0.3).map((instant) => ({ ...instant, time: instant.time + 3.5 })), players: playersOf(2, 6, 4) }));
    expect(broken).toHaveLength(1);
    expect(broken[0]).toMatchObject({ rule: 'partners', players: ['1o', '1i'] });
    expect(broken[0]!.by).toBeCloseTo(0.2, 9);
  });
});
