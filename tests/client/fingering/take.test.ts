import { describe, expect, it } from 'vitest';
import { hangsUnder } from '../../../client/views/stand/offers/take.ts';
import type { Desk } from '../../../client/views/stand/desk.ts';

const notes = new Map([['a', 4], ['b', 5], ['c', 6], ['d', 9]]);
const desk = (at: string | null, asked: { from: string; to: string; measure: number } | null): Desk => ({ facts: { notes }, caret: { at }, offers: { asked } }) as unknown as Desk;
const asked = { from: 'a', to: 'c', measure: 4 };

describe('fingerings of a passage', () => {
  it('hang under the measure in hand while it is inside the passage', () => {
    expect(['a', 'b', 'c'].map((at) => hangsUnder(desk(at, asked)))).toEqual([4, 5, 6]);
  });

  it('stay under its first measure while the hand is elsewhere or nowhere', () => {
    expect(hangsUnder(desk('d', asked))).toBe(4);
    expect(hangsUnder(desk(null, asked))).toBe(4);
  });

  it('hang nowhere while nobody asks', () => expect(hangsUnder(desk('a', null))).toBeNull());
});
