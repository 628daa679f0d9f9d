import { describe, expect, it } from 'vitest';
import type { Place } from '../../../core/fingering/frame.ts';
import { handStep } from '../../../core/fingering/steps/step.ts';
import type { StepTiming } from '../../../core/fingering/steps/timing.ts';
import { USUAL_HAND } from '../../../core/hand/reach.ts';
import { instrumentNamed } from '../../../core/instruments/instrumentNamed.ts';

const violin = instrumentNamed('violin');
const alone = { instrument: violin, hand: USUAL_HAND, players: 1, sliding: 1 };
const at = (finger: number, position: number, above: number, off = 0, string: 1 | 2 | 3 | 4 = 2): Place => ({ string, finger, position, above, off, respelled: 0 });
const SLOW: StepTiming = { available: 1, rest: 0, sounds: 1, slurred: true, grace: false };

// Names of the trade (Davidoff; Galamian); the hand in millimetres on an ideal string.
describe('what the hand does from one note to the next', () => {
  it.each([
    ['stays', at(1, 1, 2), at(3, 1, 5), 0],
    ['crosses', at(1, 1, 2), at(1, 1, 2, 0, 1), 0],
    ['extension', at(1, 1, 2), at(4, 1, 8, 1), 0],
    ['extension', at(4, 3, 10), at(1, 3, 4, -1), 0],
    ['contraction', at(1, 3, 5), at(4, 3, 9, -1), 0],
    ['delayed-shift', at(1, 1, 2), at(4, 2, 9), 2],
    ['delayed-shift', at(4, 3, 10), at(2, 2, 5), -2],
    ['substitution', at(3, 1, 5), at(1, 3, 5), 4],
    ['chromatic-slide', at(2, 1, 3), at(2, 1, 4), 0],
    ['shift-same-finger', at(1, 1, 2), at(1, 3, 5), 4],
    ['shift-departing-finger', at(1, 1, 2), at(3, 4, 10), 5],
    ['shift-arriving-finger', at(1, 1, 2), at(2, 3, 7, 0, 1), 4],
    ['shift-over-open', at(0, 1, 0), at(1, 3, 5), 4],
    ['shift-over-open', { ...at(4, 4, 12), harmonic: true as const }, at(1, 1, 2), -5],
  ] as const)('%s', (kind, a, b, semitones) => {
    const step = handStep(alone, a, b, SLOW);
    expect(step.kind).toBe(kind);
    expect(step.semitones).toBe(semitones);
    expect(step.mm > 0).toBe(semitones !== 0);
  });

  it('nothing slides when a finger goes first, when the string changes, over an open string or a harmonic, or in a rest', () => {
    const silent = [[at(1, 1, 2), at(4, 2, 9)], [at(1, 1, 2), at(2, 3, 7, 0, 1)], [at(0, 1, 0), at(1, 3, 5)], [{ ...at(4, 4, 12), harmonic: true as const }, at(4, 1, 7)]] as const;
    for (const [a, b] of silent) expect(handStep(alone, a, b, SLOW).slide).toBe(0);
    expect(handStep(alone, at(1, 1, 2), at(1, 3, 5), { ...SLOW, rest: 0.4 }).slide).toBe(0);
    expect(handStep(alone, at(1, 1, 2), at(1, 3, 5), SLOW).slide).toBeGreaterThan(0.5);
  });

  it('a note too short for the hand to follow on makes a plain shift of it', () => {
    expect(handStep(alone, at(1, 1, 2), at(4, 2, 9), { ...SLOW, sounds: 0.05 }).kind).toBe('shift-departing-finger');
  });

  it('a higher finger that gives way to a lower going up lets no more sound than the interval', () => {
    const narrows = handStep(alone, at(2, 1, 4), at(1, 3, 5), SLOW);
    const same = handStep(alone, at(1, 1, 2), at(1, 3, 5), SLOW);
    expect(narrows.mm).toBeCloseTo(same.mm, 6);
    expect(narrows.slide).toBeLessThan(same.slide / 2);
  });

  it('a slide of one among twelve is heard less than alone, and that of all twelve as much', () => {
    const slide = (players: number, sliding: number): number => handStep({ ...alone, players, sliding }, at(1, 1, 2), at(1, 2, 4), SLOW).slide;
    expect(slide(12, 1)).toBeLessThan(slide(1, 1));
    expect(slide(12, 12)).toBeCloseTo(slide(1, 1), 6);
  });

  it('millimetres and the least time follow from the string: from 2 to 7 semitones the hand travels 154 mm in 172 ms on a cello', () => {
    const cello = { ...alone, instrument: instrumentNamed('cello') };
    const { mm, needs } = handStep(cello, at(1, 2, 2), at(1, 7, 7), SLOW);
    expect(mm).toBeCloseTo(690 * (2 ** (-2 / 12) - 2 ** (-7 / 12)), 6);
    expect(needs).toBeCloseTo(0.172, 3);
  });
});
