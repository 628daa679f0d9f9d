import { describe, expect, it } from 'vitest';
import { PLAIN, viewFrom, viewReducer, viewText, ZOOMS, type View, type ViewAction } from '../../../client/tools/view/reducer.ts';

const after = (view: View, ...actions: ViewAction[]) => actions.reduce(viewReducer, view);

describe('how the part lies on the stand', () => {
  it('larger and smaller go by steps and stop at both ends', () => {
    expect(after(PLAIN, { type: 'larger' }, { type: 'smaller' })).toEqual(PLAIN);
    expect(after(PLAIN, ...Array.from({ length: 20 }, () => ({ type: 'larger' }) as const)).zoom).toBe(ZOOMS.at(-1));
    expect(after(PLAIN, ...Array.from({ length: 20 }, () => ({ type: 'smaller' }) as const)).zoom).toBe(ZOOMS[0]);
  });

  it('a pinch goes to the step nearest to it', () => {
    expect(after(PLAIN, { type: 'pinch', by: 1.5 }).zoom).toBe(1.45);
    expect(after(PLAIN, { type: 'pinch', by: 100 }).zoom).toBe(ZOOMS.at(-1));
  });

  it('turning twice is where one was, at the same size', () => {
    const large = after(PLAIN, { type: 'larger' });
    expect(after(large, { type: 'turn' })).toEqual({ form: 'paper', zoom: large.zoom });
    expect(after(large, { type: 'turn' }, { type: 'turn' })).toEqual(large);
  });

  it('is kept as text and read back; anything else is the plain view', () => {
    for (const form of ['lines', 'paper'] as const) for (const zoom of ZOOMS) expect(viewFrom(viewText({ form, zoom }))).toEqual({ form, zoom });
    for (const text of [null, '', 'paper', 'paper 17', 'scroll 1']) expect(viewFrom(text)).toEqual(PLAIN);
  });
});
