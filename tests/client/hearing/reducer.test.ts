import { describe, expect, it } from 'vitest';
import { hearingReducer, otherOf, startHearing, type Hearing, type HearingAction, type What } from '../../../client/hearing/reducer.ts';

const what = (offer: number | null, who: What['who'] = 'one'): What => ({ from: 'a', to: 'b', offer, who });
const after = (...actions: HearingAction[]): Hearing => actions.reduce(hearingReducer, startHearing);
const hear = (offer: number | null): HearingAction => ({ type: 'hear', what: what(offer) });

describe('hearing a passage', () => {
  it('is prepared, then plays, then is ready again by itself or when stopped', () => {
    expect([after(hear(0)), after(hear(0), { type: 'rendered' }), after(hear(0), { type: 'rendered' }, { type: 'ended' }), after(hear(0), { type: 'stop' })].map(({ state }) => state)).toEqual(['rendering', 'playing', 'ready', 'ready']);
  });

  it('does not begin to play once it was left while being prepared', () => {
    expect(after(hear(0), { type: 'stop' }, { type: 'rendered' }).state).toBe('ready');
    expect(after(hear(0), { type: 'stop' }, { type: 'failed' }).failed).toBe(false);
  });

  it('is prepared anew for another tempo or the beat while it plays, and only kept for later while nothing is heard', () => {
    for (const action of [{ type: 'pace', pace: 70 }, { type: 'click' }] as const) {
      expect(after(hear(0), { type: 'rendered' }, action).state).toBe('rendering');
      expect(after(action).state).toBe('ready');
    }
    expect(after(hear(0), { type: 'rendered' }, { type: 'loop' })).toMatchObject({ state: 'playing', loop: true });
  });

  it('keeps the tempo between half and all of what is written', () => {
    expect([20, 50, 75, 100, 130].map((pace) => after({ type: 'pace', pace }).pace)).toEqual([50, 50, 75, 100, 100]);
  });

  it('says once that it failed; the next hearing forgets it', () => {
    expect(after(hear(0), { type: 'failed' })).toMatchObject({ state: 'ready', failed: true });
    expect(after(hear(0), { type: 'failed' }, hear(0)).failed).toBe(false);
  });
});

describe('the other fingering', () => {
  it('is the one heard before, so that two go to and fro', () => {
    expect(otherOf(after(hear(2), hear(4)), 4, 5)).toBe(2);
    expect(otherOf(after(hear(2), hear(4), hear(2)), 2, 5)).toBe(4);
    expect(otherOf(after(hear(2), hear(2)), 4, 5)).toBe(2);
  });

  it('is the first beside the others and the second beside the first where none was heard; one alone has none', () => {
    expect([otherOf(startHearing, 3, 5), otherOf(startHearing, 0, 5), otherOf(startHearing, 0, 1)]).toEqual([0, 1, null]);
  });

  it('is never one of fingerings that were laid aside', () => {
    expect(otherOf(after(hear(4), { type: 'left' }), 0, 2)).toBe(1);
    expect(otherOf(after(hear(4)), 0, 2)).toBe(1);
  });
});
