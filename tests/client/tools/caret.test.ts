import { describe, expect, it } from 'vitest';
import { caretReducer, selected, startCaret, type Walk } from '../../../client/tools/caret/reducer.ts';

/** Three measures of two notes, and an empty one between the last two. */
const ids = ['a1', 'a2', 'b1', 'b2', 'd1', 'd2'];
const walk: Walk = { ids, measureOf: (id) => 'abcd'.indexOf(id[0]!) + 1 };
const step = (at: string, by: 1 | -1, extend = false) => caretReducer(startCaret(at), { type: 'step', by, extend, walk });
const leap = (at: string, by: 1 | -1) => caretReducer(startCaret(at), { type: 'stepMeasure', by, extend: false, walk }).at;

describe('the rosin', () => {
  it('goes from note to note and stays at the ends of the part', () => {
    expect(step('a1', 1).at).toBe('a2');
    expect(step('a2', 1).at).toBe('b1');
    expect(step('d2', 1).at).toBe('d2');
    expect(step('a1', -1).at).toBe('a1');
  });

  it('starts at the first note when it lies nowhere', () => {
    expect(caretReducer(startCaret(null), { type: 'step', by: -1, extend: false, walk }).at).toBe('a1');
  });

  it('goes by measures over an empty one, and backwards first to the start of its own', () => {
    expect(leap('b2', 1)).toBe('d1');
    expect(leap('b2', -1)).toBe('b1');
    expect(leap('d1', -1)).toBe('b1');
    expect(leap('a1', -1)).toBe('a1');
    expect(leap('d1', 1)).toBe('d1');
  });

  it('covers a passage while it is extended, whichever way, and one note after the next plain step', () => {
    const two = step('b1', 1, true);
    expect(selected(two, ids)).toEqual(['b1', 'b2']);
    const back = caretReducer(caretReducer(two, { type: 'step', by: -1, extend: true, walk }), { type: 'step', by: -1, extend: true, walk });
    expect(selected(back, ids)).toEqual(['a2', 'b1']);
    expect(selected(caretReducer(back, { type: 'step', by: 1, extend: false, walk }), ids)).toEqual(['b1']);
  });

  it('keeps the measure open while it moves, and forgets the slip when it closes', () => {
    const open = caretReducer(startCaret('a1'), { type: 'open', measure: 1, slip: 's' });
    expect(caretReducer(open, { type: 'put', at: 'b1' })).toMatchObject({ at: 'b1', open: 1, slip: 's' });
    expect(caretReducer(open, { type: 'close' })).toMatchObject({ open: null, slip: null });
  });

  it('reaches to the next note touched when it is asked to, once, and lets go when asked again', () => {
    const reaching = caretReducer(startCaret('a2'), { type: 'reach' });
    const passage = caretReducer(reaching, { type: 'put', at: 'b2' });
    expect(selected(passage, ids)).toEqual(['a2', 'b1', 'b2']);
    expect(selected(caretReducer(passage, { type: 'put', at: 'd1' }), ids)).toEqual(['d1']);
    const gone = caretReducer(reaching, { type: 'reach' });
    expect(selected(caretReducer(gone, { type: 'put', at: 'b2' }), ids)).toEqual(['b2']);
  });
});
