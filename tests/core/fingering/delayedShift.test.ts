import { describe, expect, it } from 'vitest';
import { withinHand } from '../../../core/fingering/explain/withinHand.ts';
import { fingerLine } from '../../../core/fingering/fingerLine.ts';
import { HAND_IN_ENGLISH } from '../../../core/fingering/words/english.ts';
import { withinHandWords } from '../../../core/fingering/words/withinHandWords.ts';
import { instrumentNamed } from '../../../core/instruments/instrumentNamed.ts';
import { audible, caseLine, CASES, expectedHand, fingersOf, handCost, PLACED, smoothest, start, TEMPO } from './delayedShiftCases.ts';

// Common practice, no source.
describe('the delayed shift', () => {
  it.each(PLACED)('settled as a player expects it: the finger goes first and nothing slides: %s', (_title, one, where) => {
    const { notes } = smoothest(where, caseLine(one, where), { pins: expectedHand(one, where) });
    one.reached.forEach((i) => expect(notes[i]!.step).toMatchObject({ kind: 'delayed-shift', followsAt: `n${i}`, slide: 0 }));
    expect(notes.flatMap(({ step }, i) => (step.slide > 0 ? [i] : []))).toEqual(one.slidTo);
  });

  it.each(PLACED)('the smoothest line finds it, or one that slides no more and costs the hand no more: %s', (_title, one, where) => {
    const line = caseLine(one, where);
    const expected = smoothest(where, line, { pins: expectedHand(one, where) });
    const found = smoothest(where, line, { pins: start(one, where) });
    if (fingersOf(found) === fingersOf(expected)) return;
    expect(audible(found)).toBeLessThanOrEqual(audible(expected));
    expect(handCost(found)).toBeLessThanOrEqual(handCost(expected) + 1e-3);
  });
});

const [FIFTH] = CASES as [(typeof CASES)[0]];

describe('the fifth up that resolves a step down, smoothest line', () => {
  it.each(PLACED.filter(([, one]) => one === FIFTH))('is found itself, the hand following while the fifth sounds: %s', (_title, one, where) => {
    const { notes } = smoothest(where, caseLine(one, where), { pins: start(one, where) });
    expect(notes[1]).toMatchObject({ finger: 4, step: { kind: 'delayed-shift', followsAt: 'n1', slide: 0 } });
    expect(notes[2]).toMatchObject({ finger: 3, step: { kind: 'stays', slide: 0 } });
  });
});

describe('a hand with a short fourth finger', () => {
  const where = { instrument: 'violin', string: 2, key: [0, 0] } as const;
  const line = caseLine(FIFTH, where);
  const hand = { factor: 1, shortFourth: true };
  const begins = new Map([['n0', { finger: 1 as const, string: 2, position: 1 }]]);

  it('plays the fifth with 1 on the next string, and the reach is ranked down, not hidden', () => {
    expect(smoothest(where, line, { pins: begins, hand }).notes[1]).toMatchObject({ string: 1, finger: 1 });
    const reach = smoothest(where, line, { pins: expectedHand(FIFTH, where), hand });
    expect(reach.notes[1]).toMatchObject({ string: 2, finger: 4 });
    expect(handCost(reach)).toBeGreaterThan(handCost(smoothest(where, line, { pins: expectedHand(FIFTH, where) })));
  });

  it('says that the stretch is too wide and what is played instead', () => {
    const violin = instrumentNamed('violin');
    const reach = smoothest(where, line, { pins: expectedHand(FIFTH, where) });
    const instead = withinHand(violin, line, TEMPO, reach, { hand, pins: begins, aim: 'smoothest' })!;
    expect(instead.stillBeyond).toEqual([]);
    const [first] = withinHandWords(HAND_IN_ENGLISH, { instrument: violin, line, hand }, reach, instead);
    expect(first).toMatch(/^For this hand the stretch 1-4 of \d+ mm to the F sharp is too wide\.$/);
    expect(fingerLine(violin, line, TEMPO, { pins: begins, hand, aim: 'smoothest' }).fingerings.length).toBeGreaterThan(1);
  });
});
