import { describe, expect, it } from 'vitest';
import { fingerLine } from '../../../core/fingering/fingerLine.ts';
import { lineFrom } from '../../../core/fingering/notesInput.ts';
import { instrumentNamed } from '../../../core/instruments/instrumentNamed.ts';

const fingered = (instrument: 'cello' | 'violin', midi: readonly number[], duration = 0.25) => {
  const notes = midi.map((pitch, i) => ({ id: `n${i}`, pitch, measure: 1 + Math.floor((i * duration) / 4), onset: (i * duration) % 4, duration }));
  return fingerLine(instrumentNamed(instrument), lineFrom({ instrument, tempo: 90, notes }).line, 90, { best: 1 }).fingerings[0]!.notes;
};

/** Common practice, no source. */
describe('a chord that is turned in quick notes', () => {
  it.each([
    ['cello', 'C3 A3 F#4 A3, though A is an open string', [48, 57, 66, 57]],
    ['cello', 'G2 Bb3 G4 Bb3', [43, 58, 67, 58]],
    ['violin', 'C4 A4 F#5 A4', [60, 69, 78, 69]],
  ] as const)('on the %s has its wide notes on strings of their own: %s', (instrument, _name, figure) => {
    const notes = fingered(instrument, [...figure, ...figure, ...figure, ...figure]);
    notes.slice(1).forEach(({ string }, i) => expect(string).not.toBe(notes[i]!.string));
  });

  it('is held by a hand that stays where it is', () => {
    const figure = [48, 57, 66, 57];
    const notes = fingered('cello', [...figure, ...figure, ...figure, ...figure]);
    expect(new Set(notes.filter(({ finger }) => finger !== 0).map(({ position }) => position)).size).toBe(1);
  });
});
