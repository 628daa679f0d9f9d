import { describe, expect, it } from 'vitest';
import { bariolageOf } from '../../../core/fingering/bariolage.ts';
import { fingerLine } from '../../../core/fingering/fingerLine.ts';
import { lineFrom } from '../../../core/fingering/notesInput.ts';
import { instrumentNamed } from '../../../core/instruments/instrumentNamed.ts';

const VIOLIN = [76, 69, 62, 55];

const sixteenths = (midi: readonly number[], duration = 0.25) =>
  lineFrom({ instrument: 'violin', tempo: 100, notes: midi.map((pitch, i) => ({ id: `n${i}`, pitch, measure: 1 + Math.floor((i * duration) / 4), onset: (i * duration) % 4, duration })) }).line;
const turned = (figure: readonly number[], times: number): number[] => Array.from({ length: times }, () => figure).flat();

describe('bariolage', () => {
  // Common practice, no source.
  it.each([
    ['a pedal on every fourth note', turned([80, 76, 80, 75], 6), 24],
    ['a pedal on every second note, taken open and stopped in turn', [76, 80, 76, 76, 76, 75, 76, 76, 76, 78, 76, 80, 76], 13],
    ['a broken chord round an open string, which one hand plays as it lies', turned([62, 65, 62, 57], 6), 0],
    ['a broken scale round an open string', [69, 68, 69, 68, 69, 68, 69, 70, 69, 71, 69, 72, 69, 73, 69], 0],
    ['a pedal that returns too seldom', turned([80, 76, 80, 75], 5), 0],
    ['a pedal below the whole line, which one string plays as well', turned([69, 73, 69, 74], 6), 0],
    ['a pedal no open string has', turned([79, 77, 79, 74], 6), 0],
  ])('%s', (_name, midi, count) => {
    expect(bariolageOf(sixteenths(midi), VIOLIN).size).toBe(count);
  });

  it('is not what slow notes do', () => expect(bariolageOf(sixteenths(turned([80, 76, 80, 75], 6), 1), VIOLIN).size).toBe(0));

  it('sounds its pedal on the open string and its line on others, with the hand at rest', () => {
    const { fingerings } = fingerLine(instrumentNamed('violin'), sixteenths(turned([80, 76, 80, 75], 8)), 100, { best: 1 });
    const notes = fingerings[0]!.notes;
    notes.forEach(({ string, finger }, i) => (i % 4 === 1 ? expect([string, finger]).toEqual([1, 0]) : expect(string).toBeGreaterThan(1)));
    expect(new Set(notes.filter(({ finger }) => finger !== 0).map(({ position }) => position)).size).toBe(1);
  });
});
