import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { difference } from '../../../core/agreement/difference.ts';
import { inForce } from '../../../core/agreement/inForce.ts';
import { inkAt, revisionsOf } from '../../../core/agreement/revisions.ts';
import type { AgreementEvent, LogEntry } from '../../../core/agreement/event.ts';
import { replay } from '../../../core/agreement/replay.ts';
import type { AgreementState } from '../../../core/agreement/state.ts';
import { conversations } from './arbitraries.ts';
import { Conversation, FACTS, id, LIBRARIAN, PARTNER, PLAYER, PRINCIPAL, slip } from './section.ts';

const finger = (note: string, finger: 1 | 2 | 3 | 4) => ({ note, value: { kind: 'finger' as const, finger } });

/** Lays a slip and inks it in: two rows. */
function ink(talk: Conversation, n: number, over: Parameters<typeof slip>[1] = {}): void {
  expect(talk.say(PRINCIPAL, 'propose', slip(n, over))).toBe('written');
  expect(talk.say(PRINCIPAL, 'adopt', { proposal: id(n), revision: 1 })).toBe('written');
}

/** By an oracle of its own: note, slot and value each seat plays. */
function played(state: AgreementState, seat: string): string[] {
  return inForce(state, FACTS.seats)
    .filter(({ seats }) => seats === 'all' || seats.includes(seat))
    .map(({ note, value }) => `${note} ${JSON.stringify(value, Object.keys(value).sort())}`)
    .sort();
}

describe('restoring an earlier revision', () => {
  it('inks in what stood then and sets aside what did not, and loses nothing', () => {
    const talk = new Conversation();
    ink(talk, 1);
    const first = talk.state.seq;
    ink(talk, 2, { marks: [finger('m1n0', 4), finger('m1n1', 1)] });
    expect(talk.say(PRINCIPAL, 'restore', { seq: first, why: 'The first was darker' })).toBe('written');
    expect(inForce(talk.state, FACTS.seats)).toEqual([{ ...finger('m1n0', 2), seats: 'all' }]);
    expect(talk.state.ink).toHaveLength(4);
    expect(talk.state.ink.map(({ superseded }) => superseded?.why ?? null)).toEqual(['One hand, one colour', 'The first was darker', 'The first was darker', null]);
  });

  it('goes back to nothing at all, and from there forward again', () => {
    const talk = new Conversation();
    ink(talk, 1);
    const inked = talk.state.seq;
    talk.say(PRINCIPAL, 'restore', { seq: 0, why: 'Clean' });
    expect(inForce(talk.state, FACTS.seats)).toEqual([]);
    talk.say(PRINCIPAL, 'restore', { seq: inked, why: 'Not so clean' });
    expect(inForce(talk.state, FACTS.seats)).toEqual([{ ...finger('m1n0', 2), seats: 'all' }]);
  });

  it('is for the principal, not on a locked part, and not where nothing would change', () => {
    const talk = new Conversation();
    ink(talk, 1);
    for (const by of [PARTNER, PLAYER, LIBRARIAN]) expect(talk.say(by, 'restore', { seq: 0, why: 'x' })).toBe('NOT_YOUR_ROLE');
    expect(talk.say(PRINCIPAL, 'restore', { seq: 2, why: 'x' })).toBe('NOTHING_TO_CHANGE');
    expect(talk.say(PRINCIPAL, 'restore', { seq: 99, why: 'x' })).toBe('NOTHING_TO_CHANGE');
    talk.say(LIBRARIAN, 'lock', {});
    expect(talk.say(PRINCIPAL, 'restore', { seq: 0, why: 'x' })).toBe('LOCKED');
  });

  it('keeps which of two marks a seat plays where their seats overlap', () => {
    const talk = new Conversation();
    ink(talk, 1, { seats: ['1o', '1i'], marks: [finger('m1n0', 1)] });
    ink(talk, 2, { seats: ['1i', '2o'], marks: [finger('m1n0', 2)] });
    const before = FACTS.seats.map((seat) => played(talk.state, seat));
    const { seq } = talk.state;
    ink(talk, 3, { seats: ['1o', '1i'], marks: [finger('m1n0', 3)] });
    talk.say(PRINCIPAL, 'restore', { seq, why: 'As before' });
    expect(FACTS.seats.map((seat) => played(talk.state, seat))).toEqual(before);
  });

  it('leaves ink on notes that are gone where it is', () => {
    const talk = new Conversation();
    ink(talk, 1);
    ink(talk, 2, { from: 2, to: 2 });
    talk.facts = { ...FACTS, notes: new Map([...FACTS.notes].filter(([note]) => note !== 'm1n0')) };
    talk.say(PRINCIPAL, 'restore', { seq: 0, why: 'Clean' });
    expect(talk.state.ink.map(({ superseded }) => superseded !== null)).toEqual([false, true]);
  });

  it('from any place of any history, every seat plays again what it played then', () => {
    fc.assert(
      fc.property(conversations, fc.nat(), (said, n) => {
        const talk = new Conversation();
        for (const { by, name, input } of said) talk.hear(by, name, input);
        const seq = n % (talk.log.length + 1);
        const then = replay(talk.log.slice(0, seq));
        talk.say(LIBRARIAN, 'unlock', {});
        talk.say(PRINCIPAL, 'restore', { seq, why: 'Back' });
        for (const seat of FACTS.seats) expect(played(talk.state, seat)).toEqual(played(then, seat));
        expect(difference(inForce(then, FACTS.seats), inForce(talk.state, FACTS.seats), FACTS)).toEqual([]);
      }),
      { numRuns: 300 },
    );
  });
});

describe('revisions', () => {
  it('what stood after a row is told alike by the log and by the state', () => {
    fc.assert(
      fc.property(conversations, fc.nat(), (said, n) => {
        const talk = new Conversation();
        for (const { by, name, input } of said) talk.hear(by, name, input);
        const seq = n % (talk.log.length + 1);
        const told = inkAt(talk.state, seq).map(({ one }) => ({ ...one, superseded: null }));
        expect(told).toEqual(replay(talk.log.slice(0, seq)).ink.filter(({ superseded }) => superseded === null));
      }),
      { numRuns: 300 },
    );
  });

  it('have a name where ink changed or the stage moved, and not where somebody voted or spoke', () => {
    const talk = new Conversation();
    talk.say(PARTNER, 'propose', slip(1, { to: 2, marks: [finger('m2n0', 1), finger('m1n0', 1), finger('m1n1', 2)] }));
    talk.say(PLAYER, 'castVote', { proposal: id(1), revision: 1, measure: 1, vote: 'for' });
    talk.say(PLAYER, 'comment', { id: id(2), measure: 1, proposal: null, answers: null, text: 'Hm' });
    talk.say(PRINCIPAL, 'adopt', { proposal: id(1), revision: 1, why: 'Yes' });
    talk.say(LIBRARIAN, 'moveOn', { stage: 'printed' });
    talk.say(PRINCIPAL, 'restore', { seq: 0, why: 'No' });
    expect(revisionsOf(talk.log).map(({ seq, kind, why, measures, stage }) => [seq, kind, why, measures, stage])).toEqual([
      [1, 'stage', '', [], 'roundSection'],
      [4, 'inked', 'Yes', [1, 2], null],
      [5, 'stage', '', [], 'printed'],
      [6, 'restored', 'No', [1, 2], null],
    ]);
  });

  it('name their measures as they are now, after a corrected edition was laid over', () => {
    const row = (seq: number, event: AgreementEvent): LogEntry => ({ seq, operation: id(seq), name: event.type, input: {}, events: [event], by: 'runa', byName: 'Runa', at: '2026-11-25T10:00:00.000Z' });
    const log = [row(1, { type: 'adopted', proposal: id(1), why: '', measures: [2, 1, 2] }), row(2, { type: 'laidOver', measures: [1, 3] }), row(3, { type: 'restored', to: 0, why: '', back: [], aside: [{ ink: 0, measure: 3 }] })];
    expect(revisionsOf(log).map(({ kind, measures }) => [kind, measures])).toEqual([['inked', [1, 3]], ['edition', []], ['restored', [3]]]);
  });
});
