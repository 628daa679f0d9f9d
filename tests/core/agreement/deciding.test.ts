import { describe, expect, it } from 'vitest';
import { refusalText } from '../../../core/agreement/refusal.ts';
import type { Mark } from '../../../core/music/mark.ts';
import { Conversation, FACTS, id, LIBRARIAN, PARTNER, PLAYER, PRINCIPAL, slip } from './section.ts';

const finger = (note: string, finger: 1 | 2 | 3 | 4): Mark => ({ note, value: { kind: 'finger', finger } });
const adopt = (n: number, revision = 1) => ({ proposal: id(n), revision });

describe('voting', () => {
  it('counts each person once a measure, the latest word, and lets a vote be taken back', () => {
    const talk = new Conversation();
    talk.say(PARTNER, 'propose', slip(1, { to: 2 }));
    const vote = (by: typeof PLAYER, measure: number, vote: 'for' | 'against' | null) => talk.say(by, 'castVote', { proposal: id(1), revision: 1, measure, vote });
    expect([vote(PLAYER, 1, 'for'), vote(PLAYER, 2, 'against'), vote(PLAYER, 1, 'against'), vote(PARTNER, 1, 'for'), vote(PARTNER, 1, null)]).toEqual(Array(5).fill('written'));
    expect(talk.state.proposals[id(1)]?.votes).toEqual({ 1: { wanda: 'against' }, 2: { wanda: 'against' } });
    expect(vote(PLAYER, 1, 'against')).toBe('NOTHING_TO_CHANGE');
    expect(vote(PARTNER, 1, null)).toBe('NOTHING_TO_CHANGE');
  });

  it('is for the measures of the slip, the revision that was read, and not for the librarian', () => {
    const talk = new Conversation();
    talk.say(PARTNER, 'propose', slip(1));
    const ballot = { proposal: id(1), revision: 1, measure: 1, vote: 'for' } as const;
    expect(talk.say(PLAYER, 'castVote', { ...ballot, measure: 2 })).toBe('UNKNOWN_MEASURE');
    expect(talk.say(PLAYER, 'castVote', { ...ballot, revision: 2 })).toBe('REVISED');
    expect(talk.say(LIBRARIAN, 'castVote', ballot)).toBe('NOT_YOUR_ROLE');
    expect(talk.say(PLAYER, 'castVote', { ...ballot, proposal: id(5) })).toBe('UNKNOWN_PROPOSAL');
  });
});

describe('the principal decides', () => {
  it('inks a slip in: its marks stand, with who, when and why', () => {
    const talk = new Conversation();
    talk.say(PARTNER, 'propose', slip(1, { seats: ['1i'], marks: [finger('m1n0', 2), { ...finger('m1n1', 1), seats: ['1i'] }] }));
    expect(talk.say(PRINCIPAL, 'adopt', { ...adopt(1), why: 'Yes' })).toBe('written');
    expect(talk.state.proposals[id(1)]).toMatchObject({ status: 'adopted', decided: { by: 'runa', why: 'Yes', seq: 2 } });
    expect(talk.state.ink).toEqual([
      { mark: finger('m1n0', 2), seats: ['1i'], measure: 1, proposal: id(1), why: 'One hand, one colour', inked: { by: 'runa', name: 'Runa', at: '2026-11-25T10:00:02.000Z', seq: 2 }, superseded: null },
      { mark: { ...finger('m1n1', 1), seats: ['1i'] }, seats: ['1i'], measure: 1, proposal: id(1), why: 'One hand, one colour', inked: { by: 'runa', name: 'Runa', at: '2026-11-25T10:00:02.000Z', seq: 2 }, superseded: null },
    ]);
  });

  it('may propose and ink in at once, in two lines', () => {
    const talk = new Conversation();
    expect([talk.say(PRINCIPAL, 'propose', slip(1)), talk.say(PRINCIPAL, 'adopt', adopt(1))]).toEqual(['written', 'written']);
  });

  it('alone: neither players nor the librarian ink in or set aside', () => {
    const talk = new Conversation();
    talk.say(PARTNER, 'propose', slip(1));
    for (const by of [PARTNER, PLAYER, LIBRARIAN]) {
      expect(talk.say(by, 'adopt', adopt(1))).toBe('NOT_YOUR_ROLE');
      expect(talk.say(by, 'setAside', { proposal: id(1), why: 'No' })).toBe('NOT_YOUR_ROLE');
    }
  });

  it('only what was read: a slip revised meanwhile is refused', () => {
    const talk = new Conversation();
    talk.say(PARTNER, 'propose', slip(1));
    const { id: _, ...other } = slip(1, { marks: [finger('m1n0', 4)] });
    talk.say(PARTNER, 'revise', { proposal: id(1), ...other });
    expect(talk.say(PRINCIPAL, 'adopt', adopt(1))).toBe('REVISED');
    expect(talk.say(PRINCIPAL, 'adopt', adopt(1, 2))).toBe('written');
  });

  it('not over a part that has changed: a note or a seat that has gone is refused', () => {
    const talk = new Conversation();
    talk.say(PARTNER, 'propose', slip(1));
    talk.say(PARTNER, 'propose', slip(2, { seats: ['3o'] }));
    talk.facts = { ...FACTS, notes: new Map([...FACTS.notes].filter(([note]) => note !== 'm1n0')) };
    expect(talk.say(PRINCIPAL, 'adopt', adopt(1))).toBe('UNKNOWN_NOTE');
    talk.facts = { ...FACTS, seats: ['1o', '1i'] };
    expect(talk.say(PRINCIPAL, 'adopt', adopt(2))).toBe('UNKNOWN_SEAT');
  });

  it('sets a slip aside with a reason; it stays readable with its votes', () => {
    const talk = new Conversation();
    talk.say(PARTNER, 'propose', slip(1));
    talk.say(PLAYER, 'castVote', { proposal: id(1), revision: 1, measure: 1, vote: 'for' });
    talk.say(PRINCIPAL, 'setAside', { proposal: id(1), why: 'Too bright up there' });
    expect(talk.state.proposals[id(1)]).toMatchObject({ status: 'setAside', votes: { 1: { wanda: 'for' } }, marks: [finger('m1n0', 2)], decided: { name: 'Runa', why: 'Too bright up there' } });
    expect(talk.state.ink).toEqual([]);
  });
});

describe('guarantee 11: deciding and voting are monotone when they race', () => {
  const decisions = {
    adopt: [PRINCIPAL, 'adopt', { proposal: id(1), revision: 1 }, 'inked in'],
    setAside: [PRINCIPAL, 'setAside', { proposal: id(1), why: 'No' }, 'set aside'],
    withdraw: [PARTNER, 'withdraw', { proposal: id(1) }, 'taken back'],
  } as const;
  const names = Object.keys(decisions) as (keyof typeof decisions)[];
  const pairs = names.flatMap((first) => names.map((second) => [first, second] as const));

  it.each(pairs)('%s comes before %s: the first stands, the later is told what happened', (first, second) => {
    const talk = new Conversation();
    talk.say(PARTNER, 'propose', slip(1));
    const [who, name, input, word] = decisions[first];
    expect(talk.hear(who, name, input).ok).toBe(true);
    const before = talk.state;
    const late = talk.hear(decisions[second][0], decisions[second][1], decisions[second][2]);
    expect(late.ok ? '' : refusalText(late.refusal)).toBe(`Not written: this proposal was ${word} before your line arrived.`);
    expect(talk.state).toBe(before);
  });

  it.each(names)('after %s no vote and no revision is let in', (first) => {
    const talk = new Conversation();
    talk.say(PARTNER, 'propose', slip(1));
    talk.hear(...(decisions[first].slice(0, 3) as [typeof PRINCIPAL, string, unknown]));
    expect(talk.say(PLAYER, 'castVote', { proposal: id(1), revision: 1, measure: 1, vote: 'for' })).toBe('ALREADY_DECIDED');
    const { id: _, ...content } = slip(1, { why: 'Again' });
    expect(talk.say(PARTNER, 'revise', { proposal: id(1), ...content })).toBe('ALREADY_DECIDED');
  });
});
