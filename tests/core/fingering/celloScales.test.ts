import { describe, expect, it } from 'vitest';
import { fingerLine } from '../../../core/fingering/fingerLine.ts';
import { scaleRuns } from '../../../core/fingering/scaleRuns.ts';
import { instrumentNamed } from '../../../core/instruments/instrumentNamed.ts';
import { eighths } from './lines.ts';

const MAJOR = [0, 2, 4, 5, 7, 9, 11];
const scale = (tonic: number, count: number): number[] => Array.from({ length: count }, (_, i) => tonic + 12 * Math.floor(i / 7) + MAJOR[i % 7]!);
const runs = (midi: number[]) => scaleRuns(eighths(midi, 'cello'));

describe('long scales', () => {
  it('are found going up and down, the highest note in both', () => {
    const up = scale(40, 15);
    expect(runs([...up, ...up.slice(0, -1).reverse()])).toEqual([{ from: 0, to: 14, up: true }, { from: 14, to: 28, up: false }]);
  });

  it('end where a note leaps or stays', () => {
    expect(runs([...scale(40, 12), 40])).toEqual([{ from: 0, to: 11, up: true }]);
    expect(runs([...scale(40, 12).slice(0, 11), scale(40, 12)[10]!])).toEqual([]);
  });

  it('are neither chromatic nor of a single octave', () => {
    expect(runs(Array.from({ length: 24 }, (_, i) => 40 + i))).toEqual([]);
    expect(runs(scale(40, 8))).toEqual([]);
  });
});

// Davidoff, Violoncell-Schule (1888): going down a major scale is 4-3-1 and then 4-2-1 four times.
describe('a major scale of two octaves going down the cello, no string open', () => {
  it.each([['Db', 37], ['E', 40], ['Gb', 42], ['Ab', 44], ['Eb', 39]])('%s is 4-3-1 and 4-2-1 four times', (_key, tonic) => {
    const { fingerings } = fingerLine(instrumentNamed('cello'), eighths(scale(tonic, 15).reverse(), 'cello'), 90, { openStrings: 'avoided' });
    expect(fingerings.map(({ notes }) => notes.map(({ finger }) => finger).join(''))).toContain('431421421421421');
  });
});
