import { describe, expect, it } from 'vitest';
import { caretAsLeft, pencilAsLeft, type Left } from '../../../client/tools/leftStore.ts';
import { pencilReducer } from '../../../client/tools/pencil/reducer.ts';

const measures: Record<string, number> = { a: 1, b: 2, c: 2 };
const measureOf = (note: string) => measures[note];
const first = (measure: number) => ({ 1: 'a', 2: 'b' })[measure] ?? null;
const left: Left = { at: 'c', from: 'b', open: 2, slip: 's', seat: '2i', held: 'ink', draft: [{ note: 'c', value: { kind: 'down' } }, { note: 'gone', value: { kind: 'up' } }] as unknown as Left['draft'], before: [] };

describe('a stand that is come back to', () => {
  it('has the rosin, the passage, the open measure, its slip and the seat as they were', () => {
    expect(caretAsLeft(left, 2, first, measureOf, ['2i'])).toEqual({ at: 'c', from: 'b', open: 2, slip: 's', seat: '2i', reaching: false });
    expect(caretAsLeft(left, null, first, measureOf, ['2i'])).toMatchObject({ at: 'c' });
  });

  it('begins at the measure the address names where that is another, closed', () => {
    expect(caretAsLeft(left, 1, first, measureOf, ['2i'])).toEqual({ at: 'a', from: 'a', open: null, slip: null, seat: '2i', reaching: false });
  });

  it('stands open at the measure an address names so, with its slip in hand, wherever one was', () => {
    expect(caretAsLeft(left, 1, first, measureOf, ['2i'], 't')).toMatchObject({ at: 'a', open: 1, slip: 't' });
    expect(caretAsLeft(left, 2, first, measureOf, ['2i'], '')).toMatchObject({ at: 'b', open: 2, slip: null });
  });

  it('begins anew where the note is gone, and shows the whole section where the seat is', () => {
    expect(caretAsLeft({ ...left, at: 'gone' }, null, first, measureOf, [])).toEqual({ at: 'a', from: 'a', open: null, slip: null, seat: 'all', reaching: false });
  });

  it('has what was pencilled on notes that are still there, under the same pencil', () => {
    const pencil = pencilAsLeft(left, [], measureOf, ['propose', 'alone', 'ink']);
    expect(pencil.held).toBe('ink');
    expect(pencil.draft.map(({ note }) => note)).toEqual(['c']);
    expect(pencilAsLeft(null, [], measureOf, ['propose', 'alone', 'ink'])).toMatchObject({ held: 'propose', draft: [] });
    expect(pencilAsLeft({ ...left, held: 'ink' }, [], measureOf, ['alone'])).toMatchObject({ held: 'alone' });
  });

  it('has a pencil whose strokes can be taken back one after another, down to the clean sheet', () => {
    const draft = ['a', 'b', 'c'].map((note) => ({ note, value: { kind: 'down' } })) as unknown as Left['draft'];
    let pencil = pencilAsLeft({ ...left, draft, before: [0, 2] }, [], measureOf, ['propose', 'alone', 'ink']);
    pencil = pencilReducer(pencil, { type: 'undo' });
    expect(pencil.draft.map(({ note }) => note)).toEqual(['a', 'b']);
    expect(pencilReducer(pencil, { type: 'undo' }).draft).toEqual([]);
    expect(pencilReducer(pencilAsLeft({ ...left, draft }, [], measureOf, ['propose', 'alone', 'ink']), { type: 'undo' }).draft).toEqual([]);
  });
});
