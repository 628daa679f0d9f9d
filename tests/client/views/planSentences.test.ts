import { describe, expect, it } from 'vitest';
import type { Planned } from '../../../client/staggering/messages.ts';
import { planSentences } from '../../../client/views/section/planSentences.ts';

const planned: Planned = { from: 47, to: 52, duration: 24, feasible: true, provedInfeasible: false, cost: 90, bound: 90, broken: [], players: 12, allowed: 1, crowdWindow: 0.25, changes: 36, marks: [] };
const say = (changes: Partial<Planned>, last = true) => planSentences({ ...planned, ...changes }, String, last);

describe('a plan in sentences', () => {
  it('that keeps every rule says how many change, and that no plan is better only where that is proved', () => {
    expect(say({}).lead).toMatch(/^36 changes of bow among twelve players in measures 47 to 52\..* at most 1 of 12 within 0\.25 s.* No plan is better\.$/);
    expect(say({ cost: 93 }).lead).toMatch(/A better plan may exist; none was found\.$/);
  });

  it('says nothing of a better plan, and claims no defeat, while one is still looked for', () => {
    expect(say({ cost: 93 }, false).lead).toMatch(/as the section has settled\.$/);
    expect(say({ feasible: false }, false).lead).toMatch(/^So far no plan keeps/);
  });

  it('without a change says that one bow lasts', () => expect(say({ changes: 0 }).lead).toBe('One bow lasts through measures 47 to 52: nobody has to change.'));

  it('names every rule that is broken, who breaks it, where and by how much', () => {
    const broken: Planned['broken'] = [
      { rule: 'limit', players: ['1o'], time: 3, by: 1.5, measure: 48 },
      { rule: 'end', players: ['2i'], time: 24, by: 1, measure: 52 },
      { rule: 'partners', players: ['3o', '3i'], time: 5, by: 0.25, measure: 49 },
      { rule: 'partners', players: ['4o', '4i'], time: 5, by: 0, measure: 49 },
      { rule: 'crowd', players: ['1o', '2o', '5i'], time: 8, by: 2, measure: 50 },
    ];
    expect(say({ feasible: false, provedInfeasible: true, broken })).toMatchObject({
      lead: 'The section’s rules cannot all be kept in measures 47 to 52. This is the nearest plan; it breaks:',
      broken: [
        'Desk 1 outside: a bow from measure 48 on would have to last 1.5 s longer than it does.',
        'Desk 2 inside: the last bow goes the other way than the music after it wants.',
        'Desk 3 outside and desk 3 inside change 0.25 s too close together in measure 49.',
        'Desk 4 outside and desk 4 inside change on the same part of the beat in measure 49.',
        'Three players change within 0.25 s in measure 50; 1 may.',
      ],
    });
  });

  it('claims that the rules cannot be kept only where that is proved', () => expect(say({ feasible: false }).lead).toMatch(/^No plan that keeps all of the section’s rules .* was found\./));

  it('tells fewer than five players that staggering hides nothing, and five not', () => {
    expect(say({ players: 4 }).advice).toMatch(/^4 players cannot hide a bow change/);
    expect(say({ players: 5 }).advice).toBeNull();
  });
});
