import { describe, expect, it } from 'vitest';
import type { SectionView, WorkView } from '../../../core/agreement/wire/http.ts';
import { cellInHand, cellsOf, neighbour } from '../../../client/views/folder/cells.ts';
import { rowsOf, stationsOf } from '../../../client/views/folder/stations.ts';
import { resized, seated } from '../../../client/views/shelf/seatingPlan.ts';

const section = (id: string): SectionView => ({ id, name: id, instrument: 'violin', seats: [], principal: null, settings: {} });
const work = (id: string, parts: [part: string, section: string | null][]): WorkView => ({
  id, title: id, composer: '', fileName: '', importedAt: '2026-11-20T10:00:00Z',
  parts: parts.map(([part, where]) => ({ id: part, name: part, instrument: null, section: where ? { id: where, name: where } : null, measures: 1, stage: 'pulled', locked: false, open: 0, head: 0, revision: 1 })),
});
const works = [work('w1', [['a', 'v1'], ['b', 'v2']]), work('w2', [['c', 'v2'], ['d', null]])];
const cells = cellsOf(works, [section('v1'), section('v2'), section('unused')]);

describe('the folder', () => {
  it('has works down, the sections that play across, and what has no section last', () => {
    expect(cells.columns.map((column) => column?.id ?? null)).toEqual(['v1', 'v2', null]);
    expect(cells.rows.map(({ parts }) => parts.map((here) => here.map(({ part }) => part.id)))).toEqual([[['a'], ['b'], []], [[], ['c'], ['d']]]);
  });

  it('arrows walk its parts and stay at the edges', () => {
    expect([neighbour(cells, 'a', 1, 0), neighbour(cells, 'b', 1, 0), neighbour(cells, 'b', 0, 1), neighbour(cells, 'a', 0, -1)]).toEqual(['b', 'b', 'd', 'a']);
  });

  it('the part in hand is the one chosen, else my section’s own, else the first; a part nobody plays yet is not everybody’s who sits nowhere', () => {
    expect([cellInHand(cells, 'c', 'v1'), cellInHand(cells, 'gone', 'v2'), cellInHand(cells, null, undefined), cellInHand(cellsOf([], []), null, 'v1')].map((cell) => cell?.part.id)).toEqual(['c', 'b', 'a', undefined]);
  });

  it('stations in time leave out the days nobody has said', () => {
    const programme = { id: 'p', title: '', season: '', conductor: '', days: [{ kind: 'concert' as const, date: '2026-12-11', time: null, words: '' }], deadlines: {}, works, seatings: [] };
    expect(stationsOf(programme).map(({ what }) => what)).toEqual(['pulled', 'concert']);
  });

  it('stations count deadlines back from the first rehearsal, and name the first of the rehearsals only', () => {
    const day = (kind: 'rehearsal' | 'concert', date: string) => ({ kind, date, time: null, words: '' });
    const days = [day('rehearsal', '2027-03-29'), day('rehearsal', '2027-03-30'), day('concert', '2027-04-02')];
    expect(stationsOf({ works: [], days, deadlines: { withPrincipal: null, roundSection: null } }).map(({ kind, date, what }) => [kind, date, what])).toEqual([
      ['deadline', '2027-03-08', 'inked in'],
      ['deadline', '2027-03-15', 'on the stands'],
      ['day', '2027-03-29', 'first rehearsal'],
      ['day', '2027-03-30', ''],
      ['last', '2027-04-02', 'concert'],
    ]);
  });

  it('labels go to the first row with room for them', () => {
    expect(rowsOf([{ x: 0, width: 50 }, { x: 20, width: 50 }, { x: 40, width: 50 }, { x: 50, width: 10 }, { x: 75, width: 10 }])).toEqual([0, 1, 2, 0, 0]);
  });
});

describe('who sits where', () => {
  const plan = [{ seat: '1o', person: 'a' }, { seat: '1i', person: 'b' }];

  it('a person who sits down elsewhere leaves the old chair empty', () => {
    expect(seated(plan, '1i', 'a')).toEqual([{ seat: '1o', person: null }, { seat: '1i', person: 'a' }]);
  });

  it('one more chair is the next of the last desk, one fewer takes the last away', () => {
    expect(resized(plan, 3)).toEqual([...plan, { seat: '2o', person: null }]);
    expect(resized(plan, 1)).toEqual([plan[0]]);
  });
});
