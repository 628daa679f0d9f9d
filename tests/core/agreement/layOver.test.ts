import { describe, expect, it } from 'vitest';
import type { AgreementEvent, LogEntry } from '../../../core/agreement/event.ts';
import { evolveAll } from '../../../core/agreement/evolve.ts';
import { measureHistory } from '../../../core/agreement/measureHistory.ts';
import { emptyState } from '../../../core/agreement/state.ts';

const rows = (...events: AgreementEvent[]): LogEntry[] => events.map((event, i) => ({ seq: i + 1, operation: `o${i}`, name: 'x', input: {}, events: [event], by: 'anna', byName: 'Anna', at: '2026-11-26T10:00:00.000Z' }));
const slip = (id: string, from: number, to: number): AgreementEvent => ({ type: 'proposed', id, from, to, seats: 'all', why: id, marks: [{ note: `n${from}`, value: { kind: 'retake' } }] });
const said = (id: string, measure: number): AgreementEvent => ({ type: 'commented', id, measure, proposal: null, answers: null, text: id });

/** A measure was put in before measure 2 of four. */
const PUT_IN: AgreementEvent = { type: 'laidOver', measures: [1, 3, 4, 5] };

describe('a corrected edition in the log', () => {
  it('takes slips, their votes, what was said and what was inked in along with their measures', () => {
    const state = evolveAll(emptyState(), rows(slip('a', 2, 3), { type: 'voteCast', proposal: 'a', measure: 2, vote: 'for' }, said('c', 4), { type: 'adopted', proposal: 'a', why: '', measures: [2] }, PUT_IN));
    expect(state.proposals.a).toMatchObject({ from: 3, to: 4, letter: 'a', votes: { 3: { anna: 'for' } } });
    expect(state.comments.c!.measure).toBe(5);
    expect(state.ink[0]!.measure).toBe(3);
  });

  it('gives letters on in the measure they were given in, never one twice', () => {
    const state = evolveAll(emptyState(), rows(slip('a', 2, 2), slip('b', 2, 2), PUT_IN, slip('c', 3, 3), slip('d', 2, 2)));
    expect(Object.values(state.proposals).map(({ from, letter }) => `${from}${letter}`)).toEqual(['3a', '3b', '3c', '2a']);
  });

  it('gives slips of two measures that became one letters of their own', () => {
    const state = evolveAll(emptyState(), rows(slip('a', 1, 1), slip('b', 2, 2), { type: 'laidOver', measures: [1, 1, 2] }, slip('c', 1, 1)));
    expect(Object.values(state.proposals).map(({ letter }) => letter)).toEqual(['a', 'b', 'c']);
  });

  it('keeps the history of a measure with the measure', () => {
    const entries = rows(slip('a', 2, 3), said('c', 2), PUT_IN, said('d', 3), said('e', 2), { type: 'laidOver', measures: [2, 3, 4, 5, 6] });
    expect(measureHistory(entries, 4).map(({ text }) => text)).toEqual(['a', 'c', 'd']);
    expect(measureHistory(entries, 3).map(({ text }) => text)).toEqual(['e']);
    expect(measureHistory(entries, 5).map(({ text }) => text)).toEqual(['a']);
  });
});
