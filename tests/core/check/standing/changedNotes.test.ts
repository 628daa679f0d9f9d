import { describe, expect, it } from 'vitest';
import { changedNotes } from '../../../../core/check/standing/changedNotes.ts';
import type { Mark } from '../../../../core/music/mark.ts';

const finger = (note: string, value: 1 | 2, seats?: Mark['seats']): Mark => ({ note, value: { kind: 'finger', finger: value }, ...(seats ? { seats } : {}) });
const of = (...marks: Mark[]): Map<string, Mark[]> => {
  const map = new Map<string, Mark[]>();
  for (const mark of marks) map.set(mark.note, [...(map.get(mark.note) ?? []), mark]);
  return map;
};

describe('notes whose marks changed', () => {
  it.each([
    ['nothing, though every object is new', of(finger('a', 1)), of(finger('a', 1)), []],
    ['a mark more', of(finger('a', 1)), of(finger('a', 1), finger('b', 1)), ['b']],
    ['a mark less', of(finger('a', 1), finger('b', 1)), of(finger('b', 1)), ['a']],
    ['another finger', of(finger('a', 1)), of(finger('a', 2)), ['a']],
    ['the same marks in another order, which is another reading', of(finger('a', 1), finger('a', 2)), of(finger('a', 2), finger('a', 1)), ['a']],
    ['other seats', of(finger('a', 1, ['1o'])), of(finger('a', 1, ['1o', '2o'])), ['a']],
  ])('%s', (_, before, after, changed) => expect(changedNotes(before, after)).toEqual(changed));
});
