import { describe, expect, it } from 'vitest';
import { fingerLine } from '../../../core/fingering/fingerLine.ts';
import { lineFrom } from '../../../core/fingering/notesInput.ts';
import { instrumentNamed } from '../../../core/instruments/instrumentNamed.ts';

/** Fingers settled on one string; the positions a player would read. */
function positionsRead(instrument: 'violin' | 'viola' | 'cello', notes: [spelling: string, pitch: number, finger: 1 | 2 | 3 | 4][], string: number): number[] {
  const { line, pins } = lineFrom({ instrument, tempo: 80, notes: notes.map(([spelling, pitch, finger], i) => ({ id: `n${i}`, pitch, spelling, measure: 1, onset: i, duration: 1, pin: { finger, string } })) });
  const { fingerings, refusals } = fingerLine(instrumentNamed(instrument), line, 80, { pins, best: 1 });
  expect(refusals).toEqual([]);
  return fingerings[0]!.notes.map(({ position }) => position);
}

// Half position: 1 on the first semitone, 2 on the second, 3 on the fourth or fifth; common practice, no source.
describe('half position', () => {
  it('is read where 1 and 2 lie on the first two semitones of a string', () => {
    expect(positionsRead('violin', [['A#4', 70, 1], ['B4', 71, 2], ['A#4', 70, 1]], 2)).toEqual([0, 0, 0]);
    expect(positionsRead('viola', [['D#4', 63, 1], ['E4', 64, 2], ['D#4', 63, 1]], 2)).toEqual([0, 0, 0]);
  });

  it('is not a low 1 by itself', () => {
    expect(positionsRead('violin', [['Bb4', 70, 1], ['C5', 72, 2], ['D5', 74, 3]], 2)).toEqual([1, 1, 1]);
  });

  it('ends where a finger takes what first position alone has under it', () => {
    expect(positionsRead('violin', [['A#4', 70, 1], ['B4', 71, 2], ['C#5', 73, 2], ['D5', 74, 3]], 2)).toEqual([0, 0, 1, 1]);
  });

  it('is 0 on the cello by its first finger', () => {
    expect(positionsRead('cello', [['Bb3', 58, 1], ['B3', 59, 2], ['C4', 60, 3]], 1)).toEqual([0, 0, 0]);
  });
});
