import { describe, expect, it } from 'vitest';
import { changeList } from '../../../core/agreement/changeList.ts';
import type { Mark } from '../../../core/music/mark.ts';
import { Conversation, FACTS, id, PARTNER, PRINCIPAL, slip } from './section.ts';

const up = (note: string): Mark => ({ note, value: { kind: 'bow', bow: 'up' } });

describe('the list of changes', () => {
  const talk = new Conversation();
  talk.say(PARTNER, 'propose', slip(1, { from: 3, seats: ['1i'], marks: [up('m3n2'), up('m3n0')], why: 'Lighter' }));
  talk.say(PRINCIPAL, 'propose', slip(2, { from: 1, why: 'Darker' }));
  talk.say(PRINCIPAL, 'propose', slip(3, { from: 1, marks: [{ note: 'm1n0', value: { kind: 'finger', finger: 3 } }], why: 'Darker still' }));
  talk.say(PRINCIPAL, 'propose', slip(4, { from: 1, marks: [up('m1n1')], why: 'Not decided' }));
  for (const n of [1, 2, 3]) talk.say(PRINCIPAL, 'adopt', { proposal: id(n), revision: 1 });

  it('runs in the order of the music, says what, for whom, who, when and why, and keeps what was superseded', () => {
    expect(changeList(talk.state, FACTS).map(({ measure, note, what, seats, proposedBy, who, when, why, status }) => [measure, note, what, seats, proposedBy, who, when.slice(11, 19), why, status])).toEqual([
      [1, 'm1n0', 'finger 2', 'all', 'Runa', 'Runa', '10:00:06', 'Darker', 'superseded'],
      [1, 'm1n0', 'finger 3', 'all', 'Runa', 'Runa', '10:00:07', 'Darker still', 'in force'],
      [3, 'm3n0', 'up-bow', ['1i'], 'Piet', 'Runa', '10:00:05', 'Lighter', 'in force'],
      [3, 'm3n2', 'up-bow', ['1i'], 'Piet', 'Runa', '10:00:05', 'Lighter', 'in force'],
    ]);
  });

  it('says what took the place of a superseded mark', () => {
    expect(changeList(talk.state, FACTS)[0]?.superseded).toMatchObject({ name: 'Runa', why: 'Darker still', seq: 7 });
  });

  it('follows a note into another measure of a corrected edition, and says when a note has gone', () => {
    const corrected = { ...FACTS, notes: new Map([...FACTS.notes].filter(([note]) => note !== 'm3n2').map(([note, measure]) => [note, note === 'm3n0' ? 2 : measure] as const)) };
    expect(changeList(talk.state, corrected).map(({ measure, note, status }) => [measure, note, status])).toEqual([
      [1, 'm1n0', 'superseded'],
      [1, 'm1n0', 'in force'],
      [2, 'm3n0', 'in force'],
      [3, 'm3n2', 'note gone'],
    ]);
  });
});
