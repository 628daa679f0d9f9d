import { describe, expect, it } from 'vitest';
import { fingerLine } from '../../../core/fingering/fingerLine.ts';
import type { Place } from '../../../core/fingering/frame.ts';
import { stopKind } from '../../../core/fingering/stopKind.ts';
import { instrumentNamed } from '../../../core/instruments/instrumentNamed.ts';
import { eighths } from './lines.ts';

const violin = instrumentNamed('violin');
const stopped = (string: 1 | 2 | 3 | 4, finger: number, above: number): Place => ({ string, finger, position: 1, above, off: 0, respelled: 0 });

describe('the name of a double stop', () => {
  it.each([
    ['octave-1-4', stopped(3, 1, 2), stopped(2, 4, 7)],
    ['fingered-octave-1-3', stopped(3, 1, 9), stopped(2, 3, 14)],
    ['fingered-octave-2-4', stopped(3, 2, 10), stopped(2, 4, 15)],
    ['sixth', stopped(3, 1, 2), stopped(2, 2, 4)],
    ['third', stopped(3, 3, 5), stopped(2, 1, 2)],
    ['tenth', stopped(3, 1, 5), stopped(2, 4, 14)],
    ['unison', stopped(3, 4, 9), stopped(2, 1, 2)],
    ['fifth-one-finger', stopped(3, 2, 4), stopped(2, 2, 4)],
    ['open-string', stopped(3, 0, 0), stopped(2, 4, 7)],
    ['other-stop', stopped(3, 2, 3), stopped(2, 1, 1)],
  ] as const)('%s', (name, a, b) => {
    expect(stopKind(violin, a, b)).toBe(name);
    expect(stopKind(violin, b, a)).toBe(name);
  });

  it('stands on its second note in a fingering', () => {
    const [first] = fingerLine(violin, eighths([[64, 76]]), 60, { best: 1, openStrings: 'avoided' }).fingerings;
    expect(first!.notes.map(({ stop }) => stop)).toEqual([undefined, 'octave-1-4']);
  });
});

describe('a chord of four notes that no hand holds at once', () => {
  const [first] = fingerLine(violin, eighths([[56, 63, 78, 88], 76]), 60, { best: 1 }).fingerings;

  it('is broken, the lower two and then the upper two, and no note is refused', () => {
    expect(fingerLine(violin, eighths([[56, 63, 78, 88]]), 60).refusals).toEqual([]);
    expect(first!.notes.map(({ string }) => string).slice(0, 4)).toEqual([4, 3, 2, 1]);
    expect(first!.notes.map(({ step }) => step.kind === 'together').slice(0, 4)).toEqual([false, true, false, true]);
  });

  it('says that the hand travels from the one half to the other', () => {
    expect(first!.notes[2]!.step.mm).toBeGreaterThan(50);
  });
});

describe('what a step says beside its kind', () => {
  const shift = (players: number) => fingerLine(violin, eighths([71, 76], 'violin', 90), 90, { best: 1, players, pins: new Map([['n0', { finger: 1 as const, string: 2, position: 1 }], ['n1', { finger: 1 as const, string: 2, position: 4 }]]) }).fingerings[0]!.notes[1]!.step;

  it('a slide of one player alone, where the section hears another', () => {
    expect(shift(1).slideAlone).toBeUndefined();
    const [alone, many] = [shift(1).slide, shift(12)];
    expect(many.slideAlone ?? many.slide).toBeCloseTo(alone, 3);
  });

  it('how hard the move is in its time', () => {
    const quick = fingerLine(violin, eighths([71, 76], 'violin'), 400, { best: 1, pins: new Map([['n0', { finger: 1 as const, string: 2, position: 1 }], ['n1', { finger: 1 as const, string: 2, position: 4 }]]) }).fingerings[0]!.notes[1]!.step;
    expect([shift(1).effort, quick.effort]).toEqual(['work', 'impossible']);
    expect(quick.ms).toBeLessThan(shift(1).ms);
  });

  it('the finger below stays down going up in one place, and leaves going down', () => {
    const up = fingerLine(violin, eighths([71, 72, 74, 72, 71]), 90, { best: 1, pins: new Map(['n0', 'n1', 'n2', 'n3', 'n4'].map((id) => [id, { string: 2, position: 1 }])) }).fingerings[0]!.notes;
    expect(up.map(({ step }) => step.keepsFinger ?? false)).toEqual([false, true, true, false, false]);
  });
});
