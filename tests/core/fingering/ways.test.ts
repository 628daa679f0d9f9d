import { describe, expect, it } from 'vitest';
import { fingerLine } from '../../../core/fingering/fingerLine.ts';
import { instrumentNamed } from '../../../core/instruments/instrumentNamed.ts';
import type { InstrumentName } from '../../../core/music/part.ts';
import { eighths } from './lines.ts';

const LINES: readonly (readonly [InstrumentName, string, number[]])[] = [
  ['violin', 'a scale and an arpeggio', [67, 69, 71, 72, 74, 76, 78, 79, 83, 86, 91, 86, 83, 79, 74, 71]],
  ['viola', 'a climb in thirds', [60, 64, 62, 65, 64, 67, 65, 69, 67, 71, 69, 72, 71, 74]],
  ['cello', 'a phrase over three strings', [45, 52, 57, 60, 59, 57, 55, 53, 52, 50, 48, 47, 45, 57, 64, 62]],
  ['double-bass', 'a bass line in D', [38, 37, 35, 33, 31, 33, 35, 37, 38, 42, 45, 43, 42, 40, 38, 38]],
];

describe('the suggestions beside each other', () => {
  it.each(LINES)('on the %s, %s: five, cheapest first, no two alike but in two notes', (name, _what, midi) => {
    const { fingerings } = fingerLine(instrumentNamed(name), eighths(midi, name), 90);
    expect(fingerings).toHaveLength(5);
    expect(fingerings.map(({ cost }) => cost)).toEqual(fingerings.map(({ cost }) => cost).sort((a, b) => a - b));
    fingerings.forEach(({ notes }, k) => fingerings.slice(k + 1).forEach((other) => {
      const different = notes.filter(({ string, position, finger }, i) => {
        const there = other.notes[i]!;
        return string !== there.string || (finger === 0) !== (there.finger === 0) || position !== there.position;
      });
      expect(different.length).toBeGreaterThanOrEqual(3);
    }));
  });

  it('of a few notes are all that differ in string or place of the hand', () => {
    const { fingerings } = fingerLine(instrumentNamed('violin'), eighths([74]), 90);
    const ways = fingerings.map(({ notes: [note] }) => `${note!.string} ${note!.finger === 0 ? 'open' : note!.position}`);
    expect(new Set(ways).size).toBe(ways.length);
    expect(ways.length).toBe(5);
  });
});
