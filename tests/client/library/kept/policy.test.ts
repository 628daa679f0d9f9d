import { describe, expect, it } from 'vitest';
import { opened, partIn, wantedAhead, withRows } from '../../../../client/library/kept/policy.ts';
import { emptyState } from '../../../../core/agreement/state.ts';
import type { LogEntry } from '../../../../core/agreement/event.ts';
import type { PartView, Shelf } from '../../../../core/agreement/wire/http.ts';

const part = (id: string, section: string | null, instrument: string | null = 'violin') => ({ id, head: 3, section: section ? { id: section, name: section } : null, instrument });
const sits = (id: string, person: string) => ({ id, seats: [{ seat: '1o', person: { id: person, name: person } }], principal: null });
const shelf = { sections: [sits('first', 'mona'), sits('second', 'jon')], programmes: [{ seatings: [{ section: 'second', seats: [{ seat: '1o', person: { id: 'mona', name: 'mona' } }], principal: null }], works: [{ id: 'other', parts: [part('x', 'first'), part('y', 'second', null)] }] }, { seatings: [], works: [{ id: 'suite', parts: [part('horn', null, null), part('a', 'first'), part('b', 'second')] }, { id: 'finale', parts: [part('c', 'first'), part('d', 'second')] }] }] } as unknown as Shelf;

describe('what lies in the browser', () => {
  it('is the twelve parts opened last, newest first', () => {
    const all = Array.from({ length: 14 }, (_, i) => `p${i}`).reduce<readonly string[]>(opened, []);
    expect(all).toEqual(['p13', 'p12', 'p11', 'p10', 'p9', 'p8', 'p7', 'p6', 'p5', 'p4', 'p3', 'p2']);
    expect(opened(all, 'p5').slice(0, 3)).toEqual(['p5', 'p13', 'p12']);
  });

  it('is fetched ahead: my section’s parts of this programme, then the other strings of this work, and of no other programme', () => {
    expect(wantedAhead(shelf, 'suite', 'mona').map(({ id }) => id)).toEqual(['a', 'c', 'b']);
    expect(wantedAhead(shelf, 'gone', 'mona')).toEqual([]);
  });

  it('is fetched ahead for a deputy as they sit in that programme', () => {
    expect([wantedAhead(shelf, 'other', 'mona').map(({ id }) => id), wantedAhead(shelf, 'other', 'jon').map(({ id }) => id)]).toEqual([['x', 'y'], ['x']]);
  });

  it('belongs to a part, or to none', () => {
    expect([partIn('/parts/a/engraving'), partIn('/parts/a'), partIn('/shelf'), partIn('/opened')]).toEqual(['a', 'a', null, null]);
  });

  it('a part has every row that came since it was fetched, up to the first that is missing', () => {
    const row = (seq: number) => ({ seq, operation: `o${seq}`, name: 'look', input: {}, events: [], by: 'p', byName: 'P', at: '2026-01-01T00:00:00Z' }) as LogEntry;
    const view = { state: emptyState(), head: 0 } as PartView;
    expect(withRows(view, [row(1), row(2)])).toMatchObject({ head: 2, state: { seq: 2 } });
    expect(withRows(view, [row(1), row(3)])).toMatchObject({ state: { seq: 1 } });
    expect(withRows({ ...view, head: 5 }, [])).toMatchObject({ head: 5, state: { seq: 0 } });
  });
});
