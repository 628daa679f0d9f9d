import { describe, expect, it } from 'vitest';
import type { OperationInput } from '../../../core/agreement/registry.ts';
import { refusalText } from '../../../core/agreement/refusal.ts';
import type { Mark } from '../../../core/music/mark.ts';
import { Conversation, FACTS, id, LIBRARIAN, PARTNER, PLAYER, PRINCIPAL, slip, STRANGER } from './section.ts';

const finger = (note: string, finger: 1 | 2 | 3 | 4, seats?: string[]): Mark => ({ note, value: { kind: 'finger', finger }, ...(seats ? { seats } : {}) });
const change = (note: string, after: number | string): Mark => ({ note, value: { kind: 'change', after } });

describe('a proposal', () => {
  it('stands open with its letter, its marks and who made it when', () => {
    const talk = new Conversation();
    expect(talk.say(PARTNER, 'propose', slip(1))).toBe('written');
    expect(talk.state.proposals[id(1)]).toEqual({
      id: id(1),
      letter: 'a',
      proposed: { by: 'piet', name: 'Piet', at: '2026-11-25T10:00:01.000Z', seq: 1 },
      from: 1,
      to: 1,
      seats: 'all',
      why: 'One hand, one colour',
      marks: [finger('m1n0', 2)],
      revision: 1,
      status: 'open',
      decided: null,
      votes: {},
    });
  });

  it('gets the next letter of its measure, and a letter is never used twice', () => {
    const talk = new Conversation();
    for (const n of [1, 2]) talk.say(PARTNER, 'propose', slip(n));
    talk.say(PARTNER, 'withdraw', { proposal: id(2) });
    talk.say(PARTNER, 'propose', slip(3));
    talk.say(PARTNER, 'propose', slip(4, { from: 2 }));
    expect([1, 2, 3, 4].map((n) => talk.state.proposals[id(n)]?.letter)).toEqual(['a', 'b', 'c', 'a']);
  });

  it('has letters beyond z', () => {
    const talk = new Conversation();
    for (let n = 1; n <= 53; n += 1) talk.say(PLAYER, 'propose', slip(n));
    expect([26, 27, 52, 53].map((n) => talk.state.proposals[id(n)]?.letter)).toEqual(['z', 'aa', 'az', 'ba']);
  });

  it('may contradict another open one on the same note', () => {
    const talk = new Conversation();
    talk.say(PARTNER, 'propose', slip(1));
    expect(talk.say(PLAYER, 'propose', slip(2, { marks: [finger('m1n0', 4)] }))).toBe('written');
  });

  const refusals: [string, OperationInput<'propose'>, string, string][] = [
    ['a note the part does not have', slip(1, { marks: [finger('m9n9', 1)] }), 'UNKNOWN_NOTE', 'no such note in measures 1 to 1'],
    ['a note outside its measures', slip(1, { marks: [finger('m2n0', 1)] }), 'UNKNOWN_NOTE', 'no such note in measures 1 to 1'],
    ['a measure after the last', slip(1, { from: 4, to: 5 }), 'UNKNOWN_MEASURE', 'measure 5 is outside'],
    ['measures the wrong way round', slip(1, { from: 3, to: 2 }), 'UNKNOWN_MEASURE', 'measure 3 is outside'],
    ['a seat the section does not have', slip(1, { seats: ['3i'] }), 'UNKNOWN_SEAT', 'no seat 3i'],
    ['a seat the section does not have, on one mark', slip(1, { marks: [finger('m1n0', 1, ['9o'])] }), 'UNKNOWN_SEAT', 'no seat 9o'],
    ['two fingers on one note', slip(1, { marks: [finger('m1n0', 1), finger('m1n0', 2)] }), 'SAME_SLOT_TWICE', 'same note of measure 1'],
    ['two fingers on one note for seats that overlap', slip(1, { marks: [finger('m1n0', 1, ['1o', '1i']), finger('m1n0', 2, ['1i', '2o'])] }), 'SAME_SLOT_TWICE', 'same note of measure 1'],
    ['one bow change twice, written otherwise', slip(1, { marks: [change('m1n0', '3/2'), change('m1n0', '6/4')] }), 'SAME_SLOT_TWICE', 'same note of measure 1'],
    ['a finger and no finger', slip(1, { marks: [finger('m1n0', 1), { note: 'm1n0', value: { kind: 'none', slot: 'finger' } }] }), 'SAME_SLOT_TWICE', 'same note of measure 1'],
    ['a bow change and no bow change at all', slip(1, { marks: [change('m1n0', 1), { note: 'm1n0', value: { kind: 'none', slot: 'change' } }] }), 'SAME_SLOT_TWICE', 'same note of measure 1'],
    ['a mark for a seat the slip is not for', slip(1, { seats: ['1o'], marks: [finger('m1n0', 1, ['2o'])] }), 'BAD_INPUT', 'a mark in measure 1 is for seat 2o, but the proposal is not'],
  ];
  it.each(refusals)('is refused with %s', (_, input, code, words) => {
    const decision = new Conversation().hear(PLAYER, 'propose', input);
    expect(decision).toMatchObject({ ok: false, refusal: { code } });
    expect(decision.ok ? '' : refusalText(decision.refusal)).toContain(words);
  });

  const accepted: [string, Partial<OperationInput<'propose'>>][] = [
    ['two fingers on one note for different seats', { marks: [finger('m1n0', 1, ['1o']), finger('m1n0', 2, ['1i'])] }],
    ['several bow changes on one note', { marks: [change('m1n0', 1), change('m1n0', '3/2')] }],
    ['a bow change moved to another time', { marks: [{ note: 'm1n0', value: { kind: 'none', slot: 'change', after: 1 } }, change('m1n0', '3/2')] }],
    ['finger, string and bow on one note', { marks: [finger('m1n0', 1), { note: 'm1n0', value: { kind: 'string', string: 2 } }, { note: 'm1n0', value: { kind: 'bow', bow: 'up' } }] }],
    ['a slip across measures', { from: 1, to: 4, marks: [finger('m1n0', 1), finger('m4n2', 1)] }],
  ];
  it.each(accepted)('may hold %s', (_, over) => {
    expect(new Conversation().say(PLAYER, 'propose', slip(1, over))).toBe('written');
  });

  it('is kept in one form: times reduced, seats front to back and once, "all" on a mark left out', () => {
    const talk = new Conversation();
    talk.say(PLAYER, 'propose', slip(1, { seats: ['2o', '1i', '2o'], marks: [change('m1n0', '6/4'), change('m1n1', '8/4'), { ...finger('m1n2', 1), seats: 'all' }, finger('m1n1', 1, ['2o', '1i'])] }));
    expect(talk.state.proposals[id(1)]).toMatchObject({ seats: ['1i', '2o'] });
    expect(talk.state.proposals[id(1)]?.marks).toEqual([change('m1n0', '3/2'), change('m1n1', 2), finger('m1n2', 1), finger('m1n1', 1, ['1i', '2o'])]);
  });

  it('cannot take the name of another', () => {
    const talk = new Conversation();
    talk.say(PARTNER, 'propose', slip(1));
    expect(talk.say(PLAYER, 'propose', slip(1, { from: 2 }))).toBe('ALREADY_THERE');
  });

  it('is for the players and their principal', () => {
    const talk = new Conversation();
    expect(talk.say(LIBRARIAN, 'propose', slip(1))).toBe('NOT_YOUR_ROLE');
    expect(talk.say(STRANGER, 'propose', slip(1))).toBe('NOT_YOUR_ROLE');
    expect(talk.say(PRINCIPAL, 'propose', slip(1))).toBe('written');
  });
});

describe('revising', () => {
  it('writes the slip anew and lets go of the votes for what it was', () => {
    const talk = new Conversation();
    talk.say(PARTNER, 'propose', slip(1));
    talk.say(PLAYER, 'castVote', { proposal: id(1), revision: 1, measure: 1, vote: 'against' });
    const { id: _, ...content } = slip(1, { marks: [finger('m1n0', 3)], why: 'Then with the third' });
    expect(talk.say(PARTNER, 'revise', { proposal: id(1), ...content })).toBe('written');
    expect(talk.state.proposals[id(1)]).toMatchObject({ revision: 2, letter: 'a', votes: {}, why: 'Then with the third', marks: [finger('m1n0', 3)], status: 'open', proposed: { by: 'piet' } });
  });

  it('takes a new letter when the slip moves to another first measure, and keeps it otherwise', () => {
    const talk = new Conversation();
    talk.say(PARTNER, 'propose', slip(1));
    talk.say(PARTNER, 'propose', slip(2));
    talk.say(PLAYER, 'propose', slip(3, { from: 2 }));
    const { id: _, ...moved } = slip(2, { from: 2 });
    talk.say(PARTNER, 'revise', { proposal: id(2), ...moved });
    expect(talk.state.proposals[id(2)]?.letter).toBe('b');
    const { id: __, ...longer } = slip(2, { from: 2, to: 3 });
    talk.say(PARTNER, 'revise', { proposal: id(2), ...longer });
    expect(talk.state.proposals[id(2)]?.letter).toBe('b');
  });

  it('is for whoever made it, changes something, and follows the same rules', () => {
    const talk = new Conversation();
    talk.say(PARTNER, 'propose', slip(1, { marks: [change('m1n0', '3/2')] }));
    const { id: _, ...same } = slip(1, { marks: [change('m1n0', '6/4')] });
    expect(talk.say(PARTNER, 'revise', { proposal: id(1), ...same })).toBe('NOTHING_TO_CHANGE');
    const decision = talk.hear(PRINCIPAL, 'revise', { proposal: id(1), ...same, why: 'Mine' });
    expect(decision.ok ? '' : refusalText(decision.refusal)).toBe('Not written: only Piet can change this. Make a proposal of your own.');
    expect(talk.say(PARTNER, 'revise', { proposal: id(1), ...same, marks: [finger('m3n0', 1)] })).toBe('UNKNOWN_NOTE');
    expect(talk.say(PARTNER, 'revise', { proposal: id(7), ...same })).toBe('UNKNOWN_PROPOSAL');
  });
});

describe('taking back', () => {
  it('is for whoever made it; the slip stays readable', () => {
    const talk = new Conversation();
    talk.say(PARTNER, 'propose', slip(1));
    expect(talk.say(PLAYER, 'withdraw', { proposal: id(1) })).toBe('NOT_YOURS');
    expect(talk.say(PRINCIPAL, 'withdraw', { proposal: id(1) })).toBe('NOT_YOURS');
    expect(talk.say(PARTNER, 'withdraw', { proposal: id(1), why: 'Wanda’s is better' })).toBe('written');
    expect(talk.state.proposals[id(1)]).toMatchObject({ status: 'withdrawn', marks: [finger('m1n0', 2)], decided: { by: 'piet', why: 'Wanda’s is better' } });
  });
});

describe('the facts of the part', () => {
  it('a section without seats may still propose for all', () => {
    const talk = new Conversation({ ...FACTS, seats: [] });
    expect(talk.say(PLAYER, 'propose', slip(1))).toBe('written');
    expect(talk.say(PLAYER, 'propose', slip(2, { seats: ['1o'] }))).toBe('UNKNOWN_SEAT');
  });
});
