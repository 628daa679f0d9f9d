import { describe, expect, it } from 'vitest';
import { harmonicSounding, harmonicTouched, NATURAL_HARMONICS } from '../../../core/hand/harmonics.ts';
import { canSoundOn, openStringAt, placeOnString, semitonesAbove, stringsFor } from '../../../core/hand/place.ts';
import { instrumentNamed } from '../../../core/instruments/instrumentNamed.ts';

const violin = instrumentNamed('violin');
const tenth = (mm: number): number => Math.round(mm * 10) / 10;

describe('where a pitch lies on its string', () => {
  it('is the nut for the open string, the middle for the octave, three quarters for two', () => {
    expect([0, 12, 24].map((semitones) => placeOnString(semitones, 328))).toEqual([0, 164, 246]);
  });

  // Equal temperament on an ideal string, computed by hand from the string lengths.
  it.each([
    ['violin', 2, 3, 16.4],
    ['violin', 2, 4, 31.9],
    ['violin', 2, 7, 73.3],
    ['violin', 5, 10, 61.6],
    ['viola', 2, 7, 83.8],
    ['cello', 2, 5, 97.8],
    ['double-bass', 2, 4, 103.0],
  ] as const)('on the %s from %i to %i semitones: %f mm', (name, from, to, expected) => {
    const { stringLength } = instrumentNamed(name);
    expect(tenth(placeOnString(to, stringLength) - placeOnString(from, stringLength))).toBeCloseTo(expected, 0);
  });

  it('the same interval is half as wide an octave higher', () => {
    expect(placeOnString(14, 690) - placeOnString(12, 690)).toBeCloseTo((placeOnString(2, 690) - placeOnString(0, 690)) / 2);
  });
});

describe('strings for a pitch', () => {
  it('D5 can be played on three violin strings, the lowest G on one, F3 on none', () => {
    expect([74, 55, 53].map((midi) => stringsFor(violin, midi))).toEqual([[2, 3, 4], [4], []]);
  });

  it('the fingerboard has an end', () => {
    expect([85, 86].map((midi) => canSoundOn(violin, 4, midi))).toEqual([true, false]);
  });

  it('knows open strings', () => {
    expect([76, 55, 77].map((midi) => openStringAt(violin, midi))).toEqual([1, 4, null]);
    expect(semitonesAbove(violin, 2, 71)).toBe(2);
  });
});

describe('natural harmonics', () => {
  it('sound octave, twelfth, two octaves, two octaves and a third, and a fifth (overtone series)', () => {
    expect([12, 19, 24, 28, 31].map((semitones) => harmonicSounding(semitones)?.partial)).toEqual([2, 3, 4, 5, 6]);
    expect([7, 13, 20].map(harmonicSounding)).toEqual([null, null, null]);
  });

  it('are touched at the nodes of the string', () => {
    const mm = (partial: number) => NATURAL_HARMONICS.find((harmonic) => harmonic.partial === partial)!.touched.map((semitones) => Math.round(placeOnString(semitones, 328)));
    expect([2, 3, 4, 5].map(mm)).toEqual([[164], [109, 219], [82, 246], [66, 131, 197, 262]]);
  });

  it('a fourth up the string touches the second octave, a fifth the twelfth', () => {
    expect([5, 7, 12].map((semitones) => harmonicTouched(semitones)?.partial)).toEqual([4, 3, 2]);
    expect(harmonicTouched(1)).toBeNull();
  });
});
