import { describe, expect, it } from 'vitest';
import type { Actor } from '../../../core/agreement/people.ts';
import { waitsFor, type Waiting } from '../../../core/agreement/waiting/waitsFor.ts';
import { Conversation, id, LIBRARIAN, PARTNER, PLAYER, PRINCIPAL, slip } from './section.ts';

const told = (one: Waiting) => [one.kind, one.measure, one.who, 'text' in one ? one.text : one.letter];
const waits = (talk: Conversation, who: Actor, since = 0) => waitsFor(talk.state, who, since).map(told);

describe('what waits for somebody', () => {
  it('an open slip of somebody else’s, until they vote on it, or it is written anew after they did', () => {
    const talk = new Conversation();
    talk.say(PARTNER, 'propose', slip(1, { from: 2 }));
    expect([waits(talk, PLAYER), waits(talk, PARTNER), waits(talk, LIBRARIAN)]).toEqual([[['vote', 2, 'Piet', 'a']], [], []]);
    talk.say(PLAYER, 'castVote', { proposal: id(1), revision: 1, measure: 2, vote: 'against' });
    expect(waits(talk, PLAYER)).toEqual([]);
    const { id: _, ...content } = slip(1, { from: 2 });
    talk.say(PARTNER, 'revise', { proposal: id(1), ...content, why: 'In one bow now' });
    expect(waits(talk, PLAYER)).toEqual([['vote', 2, 'Piet', 'a']]);
  });

  it('talk that names them, until they answer in the same place or it is settled', () => {
    const talk = new Conversation();
    const mentions = [{ person: PLAYER.id, name: 'Wanda' }];
    talk.say(PRINCIPAL, 'comment', { id: id(10), measure: 3, text: '@Wanda, from the second desk?', mentions });
    talk.say(PRINCIPAL, 'comment', { id: id(11), measure: 4, text: 'And here, @Wanda?', mentions });
    expect(waits(talk, PLAYER)).toEqual([['named', 3, 'Runa', '@Wanda, from the second desk?'], ['named', 4, 'Runa', 'And here, @Wanda?']]);
    expect(waits(talk, PARTNER)).toEqual([]);
    talk.say(PLAYER, 'comment', { id: id(12), measure: 3, text: 'Yes' });
    talk.say(PRINCIPAL, 'resolveComment', { id: id(11) });
    expect(waits(talk, PLAYER)).toEqual([]);
  });

  it('new talk on their slips and decisions of others, from what they last saw on', () => {
    const talk = new Conversation();
    talk.say(PLAYER, 'propose', slip(1, { from: 2 }));
    talk.say(PARTNER, 'comment', { id: id(10), measure: 2, proposal: id(1), text: 'Too high for us' });
    expect(waits(talk, PLAYER)).toEqual([['talk', 2, 'Piet', 'Too high for us']]);
    expect(waits(talk, PLAYER, talk.state.seq)).toEqual([]);
    const before = talk.state.seq;
    talk.say(PRINCIPAL, 'adopt', { proposal: id(1), revision: 1 });
    expect([waits(talk, PLAYER, before), waits(talk, PARTNER, before), waits(talk, PRINCIPAL, before)]).toEqual([[['decided', 2, 'Runa', 'a']], [['decided', 2, 'Runa', 'a']], []]);
    expect(waits(talk, PLAYER, talk.state.seq)).toEqual([]);
  });
});

describe('a mention', () => {
  it('is kept while the name stands in what is said, each person once; without one nothing is added', () => {
    const talk = new Conversation();
    const wanda = { person: PLAYER.id, name: 'Wanda' };
    talk.say(PRINCIPAL, 'comment', { id: id(10), measure: 1, text: 'As @Wanda said', mentions: [wanda, wanda, { person: PARTNER.id, name: 'Piet' }] });
    talk.say(PRINCIPAL, 'comment', { id: id(11), measure: 1, text: 'As before', mentions: [wanda] });
    expect(talk.state.comments[id(10)]!.mentions).toEqual([wanda]);
    expect(talk.state.comments[id(11)]).not.toHaveProperty('mentions');
  });
});
