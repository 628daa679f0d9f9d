import { describe, expect, it } from 'vitest';
import type { PlanQuestion } from '../../../client/staggering/messages.ts';
import { planFor } from '../../../client/staggering/planFor.ts';
import { checkPart } from '../../../core/check/checkPart.ts';
import { sectionPicture } from '../../../core/check/sectionPicture.ts';
import { seatsFor } from '../../../core/music/seat.ts';
import { partOf } from '../../support/partBuilder.ts';

const PEDAL = partOf('{pp} {q=60} G3:4~ | G3:4~ | G3:4~ | G3:4~ | G3:4~ | G3:4');
const question = (changes: Partial<PlanQuestion> = {}): PlanQuestion => ({ first: 'm1n0', last: 'm6n0', seats: seatsFor(6), absent: [], marks: [], settings: {}, ...changes });

function planned(asked: PlanQuestion) {
  const found = planFor(PEDAL, asked, () => {});
  if ('refusal' in found) throw new Error(found.refusal);
  return found.planned;
}

describe('a plan for the page', () => {
  it('comes as marks that the checker finds nothing against, as many changes as it says', () => {
    const plan = planned(question());
    const input = { part: PEDAL, seats: seatsFor(6), marks: plan.marks, settings: {} };
    expect(plan).toMatchObject({ feasible: true, from: 1, to: 6, duration: 24, players: 6, allowed: 1 });
    expect(checkPart(input).filter(({ rule }) => /^(desk|section)\//.test(rule))).toEqual([]);
    expect(sectionPicture(input)[0]!.seats.reduce((sum, { bows }) => sum + bows.length - 1, 0)).toBe(plan.changes);
  });

  it('leaves out who is absent', () => {
    const plan = planned(question({ absent: ['2i', '3i'] }));
    expect(plan.players).toBe(4);
    expect(plan.marks.flatMap(({ seats }) => seats ?? 'all')).not.toContain('2i');
  });

  it('names the measure a broken rule is broken in', () => {
    const bowSeconds = { pp: 0.3 };
    const { feasible, broken } = planned(question({ settings: { bowSeconds } }));
    expect(feasible).toBe(false);
    for (const { time, measure } of broken) expect(measure).toBe(Math.floor(time / 4 - 1e-9 + (time % 4 === 0 ? 1e-9 : 0)) + 1);
  });

  it('is refused in a sentence where the passage has a rest', () => {
    const part = partOf('{pp} {q=60} G3:4 | r:4 | G3:4');
    expect(planFor(part, question({ last: 'm3n0' }), () => {})).toEqual({ refusal: expect.stringMatching(/rest/) as string });
  });
});
