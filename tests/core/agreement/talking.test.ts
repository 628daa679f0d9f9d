import { describe, expect, it } from 'vitest';
import { refusalText } from '../../../core/agreement/refusal.ts';
import { Conversation, id, LIBRARIAN, PARTNER, PLAYER, PRINCIPAL, slip, STRANGER } from './section.ts';

describe('comments', () => {
  it('hang on a measure or on a slip, and an answer hangs where its question hangs', () => {
    const talk = new Conversation();
    talk.say(PARTNER, 'propose', slip(1, { from: 2 }));
    expect(talk.say(PLAYER, 'comment', { id: id(10), measure: 2, proposal: id(1), text: ' From the second desk? ' })).toBe('written');
    expect(talk.say(LIBRARIAN, 'comment', { id: id(11), measure: 4, answers: id(10), text: 'Printed so in the old set' })).toBe('written');
    expect(talk.state.comments[id(10)]).toMatchObject({ measure: 2, proposal: id(1), answers: null, text: 'From the second desk?', made: { name: 'Wanda' }, resolved: null });
    expect(talk.state.comments[id(11)]).toMatchObject({ measure: 2, proposal: id(1), answers: id(10) });
  });

  it('are refused where there is nothing to hang on', () => {
    const talk = new Conversation();
    talk.say(PARTNER, 'propose', slip(1, { from: 2 }));
    expect(talk.say(PLAYER, 'comment', { id: id(10), measure: 5, text: 'x' })).toBe('UNKNOWN_MEASURE');
    expect(talk.say(PLAYER, 'comment', { id: id(10), measure: 1, proposal: id(1), text: 'x' })).toBe('UNKNOWN_MEASURE');
    expect(talk.say(PLAYER, 'comment', { id: id(10), measure: 2, proposal: id(2), text: 'x' })).toBe('UNKNOWN_PROPOSAL');
    expect(talk.say(PLAYER, 'comment', { id: id(10), measure: 2, answers: id(9), text: 'x' })).toBe('UNKNOWN_COMMENT');
    expect(talk.say(STRANGER, 'comment', { id: id(10), measure: 2, text: 'x' })).toBe('NOT_YOUR_ROLE');
    talk.say(PLAYER, 'comment', { id: id(10), measure: 2, text: 'x' });
    expect(talk.say(PARTNER, 'comment', { id: id(10), measure: 3, text: 'y' })).toBe('ALREADY_THERE');
  });

  it('are settled once, by whoever made them or by the principal', () => {
    const talk = new Conversation();
    for (const n of [10, 11]) talk.say(PLAYER, 'comment', { id: id(n), measure: 1, text: 'x' });
    const decision = talk.hear(PARTNER, 'resolveComment', { id: id(10) });
    expect(decision.ok ? '' : refusalText(decision.refusal)).toBe('Not written: only Wanda or the principal can call this settled. Answer it instead.');
    expect(talk.say(LIBRARIAN, 'resolveComment', { id: id(10) })).toBe('NOT_YOUR_COMMENT');
    expect(talk.say(PLAYER, 'resolveComment', { id: id(10) })).toBe('written');
    expect(talk.say(PRINCIPAL, 'resolveComment', { id: id(11) })).toBe('written');
    expect(talk.say(PRINCIPAL, 'resolveComment', { id: id(11) })).toBe('ALREADY_RESOLVED');
    expect(talk.say(PRINCIPAL, 'resolveComment', { id: id(12) })).toBe('UNKNOWN_COMMENT');
    expect(talk.state.comments[id(11)]?.resolved).toMatchObject({ by: 'runa' });
  });
});

describe('muting a finding', () => {
  const place = { rule: 'bowing/too-long', place: 'm1n0', reason: 'We take two bows', fingerprint: 'f1' };

  it('puts it to rest with a reason until the music changes there', () => {
    const talk = new Conversation();
    expect(talk.say(LIBRARIAN, 'mute', { id: id(20), ...place })).toBe('written');
    expect(talk.say(PRINCIPAL, 'mute', { id: id(21), ...place })).toBe('NOTHING_TO_CHANGE');
    expect(talk.say(PRINCIPAL, 'mute', { id: id(21), ...place, fingerprint: 'f2' })).toBe('written');
    expect(Object.keys(talk.state.mutes)).toEqual([id(21)]);
    expect(talk.state.mutes[id(21)]).toMatchObject({ ...place, fingerprint: 'f2', muted: { name: 'Runa' } });
    expect(talk.say(PRINCIPAL, 'mute', { id: id(21), ...place, place: 'm2n0' })).toBe('ALREADY_THERE');
  });

  it('may put a whole rule to rest, which then has no fingerprint', () => {
    const talk = new Conversation();
    expect(talk.say(PRINCIPAL, 'mute', { id: id(20), ...place, place: '*', fingerprint: null })).toBe('written');
    expect(talk.say(PRINCIPAL, 'mute', { id: id(21), ...place, place: '*' })).toBe('BAD_INPUT');
    expect(talk.say(PRINCIPAL, 'mute', { id: id(21), ...place, fingerprint: null })).toBe('BAD_INPUT');
    expect(talk.say(PRINCIPAL, 'mute', { id: id(22), ...place })).toBe('written');
    expect(talk.say(LIBRARIAN, 'unmute', { id: id(20) })).toBe('written');
    expect(Object.keys(talk.state.mutes)).toEqual([id(22)]);
    expect(talk.say(LIBRARIAN, 'unmute', { id: id(20) })).toBe('UNKNOWN_MUTE');
  });

  it('is not for players', () => {
    const talk = new Conversation();
    talk.say(PRINCIPAL, 'mute', { id: id(20), ...place });
    expect(talk.say(PLAYER, 'mute', { id: id(21), ...place, place: 'm2n0' })).toBe('NOT_YOUR_ROLE');
    expect(talk.say(PLAYER, 'unmute', { id: id(20) })).toBe('NOT_YOUR_ROLE');
  });
});

describe('how far the part has come', () => {
  it('moves by itself: with the principal when they write, round the section when anybody else does', () => {
    const talk = new Conversation();
    expect(talk.state.stage).toBe('pulled');
    talk.say(LIBRARIAN, 'comment', { id: id(10), measure: 1, text: 'Please by Friday' });
    expect(talk.state.stage).toBe('pulled');
    talk.say(PRINCIPAL, 'propose', slip(1));
    expect(talk.state.stage).toBe('withPrincipal');
    talk.say(PRINCIPAL, 'propose', slip(2));
    expect(talk.state.stage).toBe('withPrincipal');
    talk.say(PLAYER, 'castVote', { proposal: id(1), revision: 1, measure: 1, vote: 'for' });
    expect(talk.state.stage).toBe('roundSection');
  });

  it('goes round the section at once when a player writes first', () => {
    const talk = new Conversation();
    talk.say(PLAYER, 'propose', slip(1));
    expect(talk.state.stage).toBe('roundSection');
  });

  it('stays inked in when somebody proposes late, and is moved by hand by principal and librarian', () => {
    const talk = new Conversation();
    expect(talk.say(PLAYER, 'moveOn', { stage: 'inkedIn' })).toBe('NOT_YOUR_ROLE');
    expect(talk.say(PRINCIPAL, 'moveOn', { stage: 'inkedIn' })).toBe('written');
    expect(talk.say(PRINCIPAL, 'moveOn', { stage: 'inkedIn' })).toBe('NOTHING_TO_CHANGE');
    talk.say(PLAYER, 'propose', slip(1));
    expect(talk.state.stage).toBe('inkedIn');
    expect(talk.say(LIBRARIAN, 'moveOn', { stage: 'pulled' })).toBe('written');
  });
});

describe('a part locked for printing', () => {
  it('takes no marks, votes or decisions until the librarian opens it, but people may talk', () => {
    const talk = new Conversation();
    talk.say(PARTNER, 'propose', slip(1));
    expect(talk.say(PRINCIPAL, 'lock', {})).toBe('NOT_YOUR_ROLE');
    expect(talk.say(LIBRARIAN, 'unlock', {})).toBe('NOTHING_TO_CHANGE');
    expect(talk.say(LIBRARIAN, 'lock', {})).toBe('written');
    expect(talk.say(LIBRARIAN, 'lock', {})).toBe('NOTHING_TO_CHANGE');
    const { id: _, ...content } = slip(1, { why: 'Again' });
    expect([
      talk.say(PLAYER, 'propose', slip(2)),
      talk.say(PARTNER, 'revise', { proposal: id(1), ...content }),
      talk.say(PARTNER, 'withdraw', { proposal: id(1) }),
      talk.say(PLAYER, 'castVote', { proposal: id(1), revision: 1, measure: 1, vote: 'for' }),
      talk.say(PRINCIPAL, 'adopt', { proposal: id(1), revision: 1 }),
      talk.say(PRINCIPAL, 'setAside', { proposal: id(1), why: 'No' }),
    ]).toEqual(Array(6).fill('LOCKED'));
    expect(talk.say(PLAYER, 'comment', { id: id(10), measure: 1, text: 'After the concert then' })).toBe('written');
    expect(talk.say(LIBRARIAN, 'moveOn', { stage: 'printed' })).toBe('written');
    expect(talk.say(LIBRARIAN, 'unlock', {})).toBe('written');
    expect(talk.say(PRINCIPAL, 'adopt', { proposal: id(1), revision: 1 })).toBe('written');
  });
});
