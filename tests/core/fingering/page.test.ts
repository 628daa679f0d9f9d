import { describe, expect, it } from 'vitest';
import type { Place } from '../../../core/fingering/frame.ts';
import { fingerLine } from '../../../core/fingering/fingerLine.ts';
import { lineFrom, type NotesInput } from '../../../core/fingering/notesInput.ts';
import { handStep } from '../../../core/fingering/steps/step.ts';
import type { StepTiming } from '../../../core/fingering/steps/timing.ts';
import { TERMS, type TermKey } from '../../../core/fingering/terms/all.ts';
import { USUAL_HAND } from '../../../core/hand/reach.ts';
import { instrumentNamed } from '../../../core/instruments/instrumentNamed.ts';

const player = { instrument: instrumentNamed('violin'), hand: USUAL_HAND, players: 1, sliding: 1 };
const place = (finger: number, position: number, above: number, string: 1 | 2 | 3 | 4 = 2): Place => ({ string, finger, position, above, off: 0, respelled: 0 });
const SLURRED: StepTiming = { available: 0.5, rest: 0, sounds: 0.5, slurred: true, grace: false };

function costOf(term: TermKey, a: Place, b: Place, timing: Partial<StepTiming> = {}): number {
  const all = { ...SLURRED, ...timing };
  return TERMS[term].step!(player, handStep(player, a, b, all), a, b, all);
}

// Common practice, no source: shifts go with the change of bow, in a rest or over an open string.
describe('what the page says of a step', () => {
  const [low, high] = [place(1, 1, 2), place(1, 3, 5)];

  it('a shift costs inside a slur, not at a change of bow, after a rest or from an open string', () => {
    expect(costOf('bareShift', low, high)).toBe(1);
    expect(costOf('bareShift', low, high, { slurred: false })).toBe(0);
    expect(costOf('bareShift', low, high, { rest: 0.3 })).toBe(0);
    expect(costOf('bareShift', place(0, 1, 0), high)).toBe(0);
  });

  it('it costs more the quieter it is', () => {
    const costs = ['pp', 'p', 'mf', 'f'].map((dynamic) => costOf('bareShift', low, high, { dynamic }));
    expect([...costs].sort((a, b) => b - a)).toEqual(costs);
    expect(new Set(costs).size).toBe(4);
  });

  it('a delayed shift is no bare one', () => {
    expect(costOf('bareShift', place(1, 1, 2), place(4, 2, 9))).toBe(0);
  });

  it('a change of string costs its phrase inside a slur alone', () => {
    expect(costOf('slurredCrossing', place(1, 1, 2, 2), place(1, 1, 2, 1))).toBe(1);
    expect(costOf('slurredCrossing', place(1, 1, 2, 2), place(1, 1, 2, 1), { slurred: false })).toBe(0);
  });

  it('one finger twice costs only quicker than 0.15 s, and not on one note repeated', () => {
    expect(costOf('sameFingerAgain', place(2, 1, 3), place(2, 1, 4), { available: 0.1 })).toBeGreaterThan(0);
    expect(costOf('sameFingerAgain', place(2, 1, 3), place(2, 1, 4), { available: 0.2 })).toBe(0);
    expect(costOf('sameFingerAgain', place(2, 1, 3), place(2, 1, 3), { available: 0.1 })).toBe(0);
  });

  it('a grace note wants a finger that is free', () => {
    expect(costOf('graceFinger', place(2, 1, 4), place(2, 1, 3), { grace: true })).toBe(1);
    expect(costOf('graceFinger', place(3, 1, 5), place(2, 1, 4), { grace: true })).toBe(0);
  });

  it('the smoothest line gives a grace note and its note two fingers', () => {
    const notes: NotesInput['notes'] = [[71, 1], [73, 0], [72, 1], [74, 1]].map(([pitch, duration], i) => ({ id: `n${i}`, pitch: pitch!, measure: 1, onset: [0, 1, 1, 2][i]!, duration: duration!, slur: 's' }));
    const { line } = lineFrom({ instrument: 'violin', tempo: 70, notes });
    const [first] = fingerLine(instrumentNamed('violin'), line, 70, { aim: 'smoothest', best: 1 }).fingerings;
    expect(first!.notes[1]!.finger).not.toBe(first!.notes[2]!.finger);
  });
});
