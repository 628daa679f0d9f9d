import { describe, expect, it } from 'vitest';
import type { AgreementEvent, LogEntry } from '../../../core/agreement/event.ts';
import { measureHistory } from '../../../core/agreement/measureHistory.ts';

const log = (...events: AgreementEvent[]): LogEntry[] =>
  events.map((event, i) => ({ seq: i + 1, operation: `o${i}`, name: event.type, input: null, events: [event], by: `p${i}`, byName: `Player ${i}`, at: `2026-11-0${i + 1}T10:00:00.000Z` }));
const laid = (id: string, from: number, to: number, type: 'proposed' | 'revised' = 'proposed'): AgreementEvent => ({ type, id, from, to, seats: 'all', why: `why ${id}`, marks: [] });
const vote = (proposal: string, measure: number, which: 'for' | 'against' | null): AgreementEvent => ({ type: 'voteCast', proposal, measure, vote: which });
const told = (entries: LogEntry[], measure: number): string[] => measureHistory(entries, measure).map(({ seq, kind, slip }) => `${seq} ${kind} ${slip}`);

describe('the history of a measure', () => {
  it('has what happened to the slips over it, and votes only for this measure', () => {
    const entries = log(laid('s', 3, 4), vote('s', 3, 'for'), vote('s', 4, 'against'), vote('s', 3, null), { type: 'adopted', proposal: 's', why: 'good', measures: [] });
    expect(told(entries, 3)).toEqual(['1 proposed s', '2 for s', '4 voteTaken s', '5 adopted s']);
    expect(told(entries, 4)).toEqual(['1 proposed s', '3 against s', '5 adopted s']);
    expect(told(entries, 5)).toEqual([]);
  });

  it('says who, when and with what sentence', () => {
    expect(measureHistory(log(laid('s', 1, 1)), 1)).toEqual([{ seq: 1, at: '2026-11-01T10:00:00.000Z', by: 'p0', name: 'Player 0', kind: 'proposed', slip: 's', text: 'why s' }]);
  });

  it('tells of a slip that moved away up to the change that took it, and of one that moved here from then on', () => {
    const entries = log(laid('s', 3, 3), laid('s', 5, 6, 'revised'), { type: 'setAside', proposal: 's', why: '' });
    expect(told(entries, 3)).toEqual(['1 proposed s', '2 revised s']);
    expect(told(entries, 6)).toEqual(['2 revised s', '3 setAside s']);
  });

  it('has what was said of the measure and of its slips, and that it was settled', () => {
    const said = (id: string, measure: number, proposal: string | null): AgreementEvent => ({ type: 'commented', id, measure, proposal, answers: null, text: 'hm' });
    const entries = log(laid('s', 2, 2), said('c', 2, 's'), said('d', 2, null), said('e', 9, null), { type: 'commentResolved', id: 'c' }, { type: 'commentResolved', id: 'e' }, { type: 'withdrawn', id: 's', why: '' });
    expect(told(entries, 2)).toEqual(['1 proposed s', '2 said s', '3 said null', '5 settled s', '7 withdrawn s']);
  });

  it('tells of a way back to earlier marks only where it changed this measure', () => {
    const entries = log({ type: 'restored', to: 0, why: 'darker', back: [{ ink: 0, measure: 2 }], aside: [{ ink: 1, measure: 4 }] });
    expect([1, 2, 3, 4].map((measure) => told(entries, measure))).toEqual([[], ['1 restored null'], [], ['1 restored null']]);
  });
});
