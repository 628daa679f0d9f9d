import { describe, expect, it } from 'vitest';
import { carriedPlaces } from '../../../core/agreement/carried.ts';
import type { AgreementEvent, LogEntry } from '../../../core/agreement/event.ts';
import { evolveAll } from '../../../core/agreement/evolve.ts';
import { emptyState } from '../../../core/agreement/state.ts';
import { layOver } from '../../../core/matching/editions/layOver.ts';
import { partOf } from '../../support/partBuilder.ts';

const OLD = partOf('C5:1 D5:1 E5:1 F#5:1 | G5:1 A5:1 B5:1 D5:1 | E5:2 G5:2 | A5:1 C5:1 F#5:2');
/** A measure was put in before measure 2, and a note of measure 4 is another one. */
const LAID = layOver(partOf('C5:1 D5:1 E5:1 F#5:1 | B5:2 D6:2 | G5:1 A5:1 B5:1 D5:1 | E5:2 G5:2 | A5:1 D5:1 F#5:2'), OLD, 1);

const note = (measure: number, index: number) => OLD.measures[measure - 1]!.notes[index]!.id;
const slip = (id: string, measure: number, index: number): AgreementEvent => ({ type: 'proposed', id, from: measure, to: measure, seats: 'all', why: id, marks: [{ note: note(measure, index), value: { kind: 'finger', finger: 3 } }] });
const said = (id: string, measure: number): AgreementEvent => ({ type: 'commented', id, measure, proposal: null, answers: null, text: id });
const muted = (id: string, place: string): AgreementEvent => ({ type: 'muted', id, rule: 'x/y', place, reason: 'Heard.', fingerprint: 'f' });

function stateAfter(...events: AgreementEvent[]) {
  const all: AgreementEvent[] = [...events, { type: 'laidOver', measures: LAID.measures! }];
  return evolveAll(emptyState(), all.map((event, i): LogEntry => ({ seq: i + 1, operation: `o${i}`, name: 'x', input: {}, events: [event], by: 'anna', byName: 'Anna', at: '2026-11-26T10:00:00.000Z' })));
}

describe('what did not go along with a corrected edition', () => {
  const state = stateAfter(
    slip('ink', 4, 1), { type: 'adopted', proposal: 'ink', why: '', measures: [4] },
    slip('kept', 3, 1), { type: 'adopted', proposal: 'kept', why: '', measures: [3] },
    slip('open', 2, 0), slip('aside', 4, 1), { type: 'setAside', proposal: 'aside', why: '' },
    said('on the changed one', 4), said('elsewhere', 3), muted('gone', `tooFar:${note(4, 1)}`), muted('there', `tooFar:${note(3, 1)}`),
  );
  const places = carriedPlaces(state, OLD, LAID.part);
  const at = (from: number) => places.find(({ before }) => before?.from === from);

  it('is every mark in ink or on an open slip whose music changed, and no other', () => {
    expect(places.flatMap(({ marks }) => marks).map(({ proposal, isInk, measure, why }) => [proposal, isInk, measure, why])).toEqual([['open', false, 2, 'beside'], ['ink', true, 4, 'changed']]);
  });

  it('is told with both versions of its measures, and new measures as new', () => {
    expect(places.map(({ before, after }) => [before?.from, after?.from])).toEqual([[undefined, 2], [2, 3], [4, 5]]);
    expect(at(4)!.before!.measures).toEqual([OLD.measures[3]]);
    expect(at(4)!.after!.measures).toEqual([LAID.part.measures[4]]);
    expect(at(4)!.marks[0]!.maybe).toEqual({ note: LAID.part.measures[4]!.notes[1]!.id, measure: 5 });
  });

  it('is what was said there and is open, and what was put to rest there', () => {
    expect(at(4)).toMatchObject({ comments: ['on the changed one'], mutes: ['gone'] });
    expect(places.flatMap(({ comments }) => comments)).toHaveLength(1);
    expect(places.flatMap(({ mutes }) => mutes)).toHaveLength(1);
  });

  it('is nothing where nothing changed', () => expect(carriedPlaces(stateAfter(slip('a', 1, 1)), OLD, OLD)).toEqual([]));
});
