import { describe, expect, it } from 'vitest';
import type { CarriedMark } from '../../../../core/agreement/carried.ts';
import { carrying } from '../../../../client/tools/carried/reducer.ts';

const mark = (key: string, maybe: string | null): CarriedMark => ({ key, mark: { note: 'old', value: { kind: 'retake' } }, seats: 'all', proposal: 'p', isInk: true, measure: 1, why: 'changed', maybe: maybe === null ? null : { note: maybe, measure: 1 } });
const marks = [mark('a', 'n1'), mark('b', null), mark('c', 'n3')];
const walk = ['n1', 'n2', 'n3'];

describe('a mark that did not go along, in hand', () => {
  it('points at its likeliest note, and at none where there is none', () => {
    const first = carrying({ key: null, note: null }, { type: 'next', by: 1, marks });
    expect(first).toEqual({ key: 'a', note: 'n1' });
    expect(carrying(first, { type: 'next', by: 1, marks })).toEqual({ key: 'b', note: null });
  });

  it('stays the first and the last at the ends of the list', () => {
    expect(carrying({ key: 'a', note: 'n2' }, { type: 'next', by: -1, marks })).toEqual({ key: 'a', note: 'n2' });
    expect(carrying({ key: 'c', note: 'n3' }, { type: 'next', by: 1, marks })).toEqual({ key: 'c', note: 'n3' });
  });

  it('goes from note to note of its place, from nowhere to the first, and no further than the last', () => {
    expect(carrying({ key: 'b', note: null }, { type: 'step', by: 1, walk }).note).toBe('n1');
    expect(carrying({ key: 'a', note: 'n1' }, { type: 'step', by: 1, walk }).note).toBe('n2');
    expect(carrying({ key: 'a', note: 'n3' }, { type: 'step', by: 1, walk }).note).toBe('n3');
    expect(carrying({ key: 'a', note: 'far' }, { type: 'step', by: -1, walk }).note).toBe('n1');
    expect(carrying({ key: null, note: null }, { type: 'step', by: 1, walk }).note).toBe(null);
  });

  it('goes to a note that is tapped', () => expect(carrying({ key: 'a', note: 'n1' }, { type: 'point', note: 'n9' })).toEqual({ key: 'a', note: 'n9' }));
});
