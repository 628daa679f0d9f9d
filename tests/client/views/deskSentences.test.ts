import { describe, expect, it } from 'vitest';
import { factsOf } from '../../../core/agreement/facts.ts';
import { emptyState, type Proposal } from '../../../core/agreement/state.ts';
import { seatsFor } from '../../../core/music/seat.ts';
import { indexPart } from '../../../client/library/partIndex.ts';
import { startCaret, type CaretAction } from '../../../client/tools/caret/reducer.ts';
import { startPencil } from '../../../client/tools/pencil/reducer.ts';
import { perform } from '../../../client/views/stand/commands.ts';
import type { Desk } from '../../../client/views/stand/desk.ts';
import { subSentence } from '../../../client/views/stand/sentence.ts';
import { smallPart } from '../../support/smallPart.ts';

const part = smallPart();
const index = indexPart(part);
const facts = factsOf(part, seatsFor(4));
const stamp = { by: 'p', name: 'Ilse Tarnow', at: '2026-11-25T10:00:00Z', seq: 1 };
const slip: Proposal = { id: 's', letter: 'a', proposed: stamp, from: 1, to: 1, seats: 'all', why: 'why', marks: [], revision: 1, status: 'open', decided: null, votes: {} };

/** Of a desk only what these sentences look at. */
function deskWith(more: Partial<Desk>): { desk: Desk; moves: CaretAction[]; said: (string | null)[] } {
  const moves: CaretAction[] = [];
  const said: (string | null)[] = [];
  const desk = {
    index, facts, state: emptyState(), caret: startCaret(index.first.get(1)!), pencil: startPencil(), heard: [], stopped: false, checker: null, offers: { found: null }, snapshot: { status: 'live', waiting: [] },
    move: (action: CaretAction) => moves.push(action), say: (sentence: string | null) => said.push(sentence), ...more,
  } as unknown as Desk;
  return { desk, moves, said };
}

describe('what a key does where one stands', () => {
  it('a vote in a closed measure with a slip opens it, and says so instead of denying the slip', () => {
    const { desk, moves, said } = deskWith({ state: { ...emptyState(), proposals: { s: slip } } });
    perform(desk, { do: 'for' });
    expect(moves).toContainEqual({ type: 'open', measure: 1, slip: 's' });
    expect(said).toEqual(['0a lies open. Now your vote.']);
  });

  it('a vote where no slip hangs says that none does', () => {
    const { desk, moves, said } = deskWith({});
    perform(desk, { do: 'against' });
    expect(moves).toEqual([]);
    expect(said[0]).toMatch(/^No slip lies here/);
  });

  it('taking back with nothing to take back says so', () => {
    const { desk, said } = deskWith({});
    perform(desk, { do: 'undo' });
    expect(said).toEqual(['Nothing to take back.']);
  });
});

describe('the second line of the ledge', () => {
  const finding = { rule: 'none/such', message: 'm', text: 'Watch this place.', facts: {}, measure: 1, notes: [index.first.get(1)!], seats: 'all', severity: 'worthALook', place: 'p', fingerprint: 'f' } as unknown as Desk['heard'][number];
  const draftIn = (measure: number) => ({ ...startPencil(), draft: [{ note: index.first.get(measure)!, value: { kind: 'retake' as const } }] });

  it('tells what is to be watched here although a draft waits in another measure, and the draft where it lies', () => {
    expect(subSentence(deskWith({ heard: [finding], pencil: draftIn(3) }).desk, null)).toBe('Watch this place.');
    expect(subSentence(deskWith({ heard: [finding], pencil: draftIn(1) }).desk, null)).toMatch(/^One mark pencilled/);
    expect(subSentence(deskWith({ pencil: draftIn(3) }).desk, null)).toMatch(/^One mark pencilled/);
  });
});
