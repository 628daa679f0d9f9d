import { describe, expect, it } from 'vitest';
import { fingerLine } from '../../../core/fingering/fingerLine.ts';
import { sparseMarks } from '../../../core/fingering/sparseMarks.ts';
import { instrumentNamed } from '../../../core/instruments/instrumentNamed.ts';
import type { Pin } from '../../../core/fingering/pin.ts';
import { eighths } from './lines.ts';

const violin = instrumentNamed('violin');

/** Marks of a fingering that is settled note by note: string, finger, position. */
function marksOf(midi: number[], places: [string: number, finger: 0 | 1 | 2 | 3 | 4, position: number][]): string[] {
  const line = eighths(midi);
  const pins = new Map(places.map(([string, finger, position], i) => [line[i]!.id, { string, finger, ...(finger === 0 ? {} : { position }) } satisfies Pin]));
  const { fingerings } = fingerLine(violin, line, 90, { pins, best: 1 });
  return sparseMarks(violin, line, fingerings[0]!).map(({ note, value }) => `${note} ${Object.values(value).join(':')}`);
}

// Common practice, no source.
describe('the figures a player needs', () => {
  it('are the first one where the hand then stays', () => {
    expect(marksOf([71, 72, 74, 72], [[2, 1, 1], [2, 2, 1], [2, 3, 1], [2, 2, 1]])).toEqual(['n0 finger:1']);
  });

  it('are the first and the one after a shift', () => {
    expect(marksOf([71, 72, 74, 76], [[2, 1, 1], [2, 2, 1], [2, 1, 3], [2, 2, 3]])).toEqual(['n0 finger:1', 'n2 finger:1', 'n3 finger:2']);
  });

  it('name the string where the hand begins above first position', () => {
    expect(marksOf([74, 76], [[2, 1, 3], [2, 2, 3]])).toEqual(['n0 finger:1', 'n0 string:2', 'n1 finger:2']);
  });

  it('tell open from stopped where both are there', () => {
    expect(marksOf([67, 69, 71], [[3, 3, 1], [2, 0, 1], [2, 1, 1]])).toEqual(['n0 finger:3', 'n1 finger:0']);
    expect(marksOf([67, 69, 71], [[3, 3, 1], [3, 4, 1], [2, 1, 1]])).toEqual(['n0 finger:3', 'n1 finger:4']);
  });
});
