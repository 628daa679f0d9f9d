import { describe, expect, it } from 'vitest';
import { noticeOf } from '../../../client/views/stand/waiting/noticeOf.ts';
import type { Actor } from '../../../core/agreement/people.ts';
import { Conversation, id, PARTNER, PLAYER, PRINCIPAL, slip } from '../../core/agreement/section.ts';

const says = (talk: Conversation, who: Actor, told: number) => noticeOf(talk.state, who, told, String);

describe('a sentence in the ledge', () => {
  it('comes when one is named, to that person alone', () => {
    const talk = new Conversation();
    talk.say(PRINCIPAL, 'comment', { id: id(10), measure: 3, text: '@Wanda?', mentions: [{ person: PLAYER.id, name: 'Wanda' }] });
    expect([says(talk, PLAYER, 0), says(talk, PARTNER, 0), says(talk, PLAYER, talk.state.seq)]).toEqual(['Runa names you, measure 3. Shift n shows what waits for you.', null, null]);
  });

  it('comes when a slip is laid where one wrote, not elsewhere', () => {
    const talk = new Conversation();
    talk.say(PLAYER, 'comment', { id: id(10), measure: 2, text: 'Not so high' });
    const told = talk.state.seq;
    talk.say(PARTNER, 'propose', slip(1, { from: 2 }));
    expect([says(talk, PLAYER, told), says(talk, PRINCIPAL, told)]).toEqual(['Piet lays 2a in a measure you wrote in. Shift n shows what waits for you.', null]);
  });

  it('comes when one’s own slip is decided, not another’s', () => {
    const talk = new Conversation();
    talk.say(PLAYER, 'propose', slip(1, { from: 2 }));
    const told = talk.state.seq;
    talk.say(PRINCIPAL, 'setAside', { proposal: id(1), why: 'Too high' });
    expect([says(talk, PLAYER, told), says(talk, PARTNER, told)]).toEqual(['Your 2a is set aside by Runa.', null]);
  });

  it('of several things says the newest', () => {
    const talk = new Conversation();
    talk.say(PLAYER, 'propose', slip(1, { from: 2 }));
    talk.say(PRINCIPAL, 'comment', { id: id(10), measure: 3, text: '@Wanda?', mentions: [{ person: PLAYER.id, name: 'Wanda' }] });
    talk.say(PRINCIPAL, 'adopt', { proposal: id(1), revision: 1 });
    expect(says(talk, PLAYER, 0)).toBe('Your 2a is inked in by Runa.');
  });
});
