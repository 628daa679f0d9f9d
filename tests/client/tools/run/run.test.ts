import { describe, expect, it } from 'vitest';
import { leadingOf, stepRun, type Run } from '../../../../client/tools/run/run.ts';
import type { Proposal, Vote } from '../../../../core/agreement/state.ts';

const stamp = { by: 'p', name: 'Ilse Tarnow', at: '2026-11-25T10:00:00Z', seq: 1 };
const slip = (id: string, votes: Record<string, Vote> = {}): Proposal => ({ id, letter: id, proposed: stamp, from: 2, to: 2, seats: 'all', why: 'why', marks: [], revision: 1, status: 'open', decided: null, votes: { 2: votes } });

describe('the run-through', () => {
  it('meets every open measure once, from where the hand lies and round, and counts them', () => {
    let run: Run = [];
    const met = [];
    for (let i = 0, here = 5; i < 4; i += 1) {
      const step = stepRun(run, [2, 9, 30], here);
      met.push([step.to, step.at, step.of]);
      run = step.run;
      here = step.to ?? here;
    }
    expect(met).toEqual([[9, 1, 3], [30, 2, 3], [2, 3, 3], [null, 3, 3]]);
  });

  it('counts on with the same number while measures are decided under way', () => {
    const first = stepRun([], [2, 9, 30], 0);
    const second = stepRun(first.run, [9, 30], 2);
    expect([second.to, second.at, second.of, second.decided]).toEqual([9, 2, 3, 1]);
    const third = stepRun(second.run, [9, 30], 9);
    expect(stepRun(third.run, [9], 30)).toEqual({ run: [], to: null, at: 3, of: 3, decided: 2 });
  });

  it('begins anew after its end, and has nothing to say of nothing', () => {
    expect(stepRun([], [9], 30)).toEqual({ run: [9], to: 9, at: 1, of: 1, decided: 0 });
    expect(stepRun([], [], 1)).toEqual({ run: [], to: null, at: 0, of: 0, decided: 0 });
  });

  it('takes up what is laid meanwhile', () => {
    expect(stepRun([2, 9], [2, 5, 9], 9)).toMatchObject({ to: 5, at: 3, of: 3 });
  });

  it('hands the slip most are for; of equals the one with more votes, then the one laid first', () => {
    expect(leadingOf([slip('a', { x: 'for' }), slip('b', { x: 'for', y: 'for', z: 'against' }), slip('c', { x: 'against' })], 2)).toMatchObject({ slip: { id: 'b' }, plus: 2, minus: 1 });
    expect(leadingOf([slip('a'), slip('b')], 2)?.slip.id).toBe('a');
    expect(leadingOf([], 2)).toBeUndefined();
  });
});
