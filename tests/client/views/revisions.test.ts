import { describe, expect, it } from 'vitest';
import type { InkChange } from '../../../core/agreement/difference.ts';
import type { Revision } from '../../../core/agreement/revisions.ts';
import { snippetsOf } from '../../../client/views/revisions/snippets.ts';
import { compared, stateName, statesOf, stepped } from '../../../client/views/revisions/states.ts';
import { addressOf, placeOf } from '../../../client/router.ts';

const revision = (seq: number, kind: Revision['kind'], over: Partial<Revision> = {}): Revision => ({ seq, kind, at: '2026-11-25T10:00:00Z', by: 'runa', name: 'Runa', why: '', measures: [], stage: null, ...over });
const number = (ordinal: number): string => String(ordinal);

describe('the states of a part', () => {
  const states = statesOf([revision(2, 'inked'), revision(4, 'stage', { stage: 'printed' }), revision(6, 'inked'), revision(6, 'stage', { stage: 'onStands' }), revision(8, 'stage', { stage: 'onStands' })]);

  it('begin with the part as it came, each row of the log once', () => {
    expect(states.map(({ seq }) => seq)).toEqual([0, 2, 4, 6, 8]);
  });

  it('the last change of ink is compared with what was before it, unless two others are asked for', () => {
    expect(compared(states, null)).toEqual({ from: 4, to: 6 });
    expect(compared(states, { from: 0, to: 2 })).toEqual({ from: 0, to: 2 });
    expect(compared(states, { from: 0, to: 5 })).toEqual({ from: 4, to: 6 });
    expect(compared(statesOf([]), null)).toEqual({ from: 0, to: 0 });
  });

  it('arrows go from one to the next, and stay at the ends', () => {
    expect([stepped(states, 4, 1), stepped(states, 4, -1), stepped(states, 0, -1), stepped(states, 8, 1)]).toEqual([6, 2, 0, 8]);
  });

  it('say when, who and where; of many measures the first six', () => {
    expect(stateName(states[0]!, number)).toBe('the part as it came');
    expect(stateName({ seq: 2, revision: revision(2, 'inked', { measures: [1, 2, 3, 4, 5, 6, 7, 9] }) }, number)).toBe('25 November, Runa: inked in, measures 1, 2, 3, 4, 5, 6 and 2 more');
    expect(stateName(states[2]!, number)).toBe('25 November, Runa: printed');
  });

  it('have an address that leads back to them', () => {
    for (const between of [null, { from: 2, to: 6 }]) {
      const [path, search = ''] = addressOf({ at: 'revisions', part: 'a b', between }).split('?');
      expect(placeOf(path!, search && `?${search}`)).toEqual({ at: 'revisions', part: 'a b', between });
    }
    expect(placeOf('/archive', '')).toEqual({ at: 'archive' });
  });
});

describe('measures in which something differs', () => {
  const change = (measure: number): InkChange => ({ measure, note: `m${measure}`, kind: 'added', before: null, after: { kind: 'retake' }, seats: 'all' });
  const systems = [{ first: 1, last: 4 }, { first: 5, last: 8 }];

  it('stand together where they are neighbours on one line of the part', () => {
    const found = snippetsOf([1, 1, 2, 4, 5, 6].map(change), systems);
    expect(found.map(({ system, from, to, changes }) => [system, from, to, changes.length])).toEqual([[0, 1, 2, 3], [0, 4, 4, 1], [1, 5, 6, 2]]);
  });

  it('wait for their line where it is not laid out yet', () => {
    expect(snippetsOf([change(9)], systems)).toEqual([]);
  });
});
