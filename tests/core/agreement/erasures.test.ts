import { describe, expect, it } from 'vitest';
import { erasures } from '../../../core/agreement/erasures.ts';
import { revisionsOf } from '../../../core/agreement/revisions.ts';
import type { Mark } from '../../../core/music/mark.ts';
import { Conversation, FACTS, id, LIBRARIAN, PRINCIPAL, slip } from './section.ts';

const finger = (note: string, n: 1 | 2 | 3, seats?: string[]): Mark => ({ note, value: { kind: 'finger', finger: n }, ...(seats ? { seats } : {}) });

function ink(talk: Conversation, n: number, marks: Mark[], from = 1): void {
  talk.say(PRINCIPAL, 'propose', slip(n, { from, to: 4, marks }));
  expect(talk.say(PRINCIPAL, 'adopt', { proposal: id(n), revision: 1 })).toBe('written');
}

function listed(talk: Conversation, facts = FACTS) {
  const stages = revisionsOf(talk.log).flatMap(({ seq, stage }) => (stage ? [{ seq, stage }] : []));
  return erasures(talk.state, facts, stages).map(({ measure, desk, one }) => [measure, desk, one.mark.value.kind === 'finger' ? one.mark.value.finger : one.mark.value.kind]);
}

describe('what has to be erased from hired material', () => {
  it('is every mark that stands, on each desk it stands on, by measure and desk', () => {
    const talk = new Conversation();
    ink(talk, 1, [finger('m2n0', 1, ['1o', '1i', '3o']), finger('m1n0', 2)]);
    expect(listed(talk)).toEqual([[1, 1, 2], [1, 2, 2], [1, 3, 2], [2, 1, 1], [2, 3, 1]]);
  });

  it('a mark replaced before the part was handed out is on no paper; one replaced after is', () => {
    const talk = new Conversation();
    ink(talk, 1, [finger('m1n0', 1, ['1o'])]);
    ink(talk, 2, [finger('m1n0', 2, ['1o'])]);
    expect(listed(talk)).toEqual([[1, 1, 2]]);
    talk.say(LIBRARIAN, 'moveOn', { stage: 'onStands' });
    ink(talk, 3, [finger('m1n0', 3, ['1o'])]);
    expect(listed(talk)).toEqual([[1, 1, 2], [1, 1, 3]]);
  });

  it('what rubs out print, and what stood on notes that are gone, leaves no pencil', () => {
    const talk = new Conversation();
    ink(talk, 1, [{ note: 'm1n0', value: { kind: 'none', slot: 'finger' } }, finger('m1n1', 1)]);
    expect(listed(talk, { ...FACTS, notes: new Map([...FACTS.notes].filter(([note]) => note !== 'm1n1')) })).toEqual([]);
  });
});
