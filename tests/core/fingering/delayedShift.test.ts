import { describe, expect, it } from 'vitest';
import { fingerLine } from '../../../core/fingering/fingerLine.ts';
import { lineFrom } from '../../../core/fingering/notesInput.ts';
import { instrumentNamed } from '../../../core/instruments/instrumentNamed.ts';
import type { HandProfile } from '../../../core/hand/reach.ts';

const USUAL: HandProfile = { factor: 1, shortFourth: false };

/** A perfect fifth up under one slow slur that resolves a step down, begun with finger 1 in a given place. */
function fifthAndStep(midi: number, string: number, position: number, hand: HandProfile) {
  const notes = [midi, midi + 7, midi + 5].map((pitch, i) => ({ id: ['start', 'fifth', 'resolution'][i]!, pitch, measure: 1, onset: i, duration: 1, slur: 's', ...(i === 0 ? { pin: { finger: 1 as const, string, position } } : {}) }));
  const { line, pins } = lineFrom({ instrument: 'violin', tempo: 50, notes });
  return fingerLine(instrumentNamed('violin'), line, 50, { pins, aim: 'smoothest', best: 5, hand }).fingerings;
}

// Common practice, no source.
describe('the delayed shift, smoothest line', () => {
  it.each([
    ['B on the A string', 71, 2, 1],
    ['E on the D string', 64, 3, 1],
    ['A on the G string', 57, 4, 1],
  ])('from %s the fourth finger reaches the fifth, the hand follows while it sounds, and nothing slides', (_name, midi, string, position) => {
    const [, fifth, resolution] = fifthAndStep(midi, string, position, USUAL)[0]!.notes;
    expect(fifth).toMatchObject({ string, finger: 4, step: { kind: 'delayed-shift', followsAt: 'fifth', slide: 0 } });
    expect(resolution).toMatchObject({ string, finger: 3, step: { kind: 'stays', slide: 0 } });
  });

  it('a hand with a short fourth finger plays the fifth otherwise, and still sees the reach among its fingerings or none that stretches as far', () => {
    const fingerings = fifthAndStep(71, 2, 1, { factor: 1, shortFourth: true });
    const reach = fingerings.findIndex(({ notes }) => notes[1]!.string === 2 && notes[1]!.step.kind === 'delayed-shift');
    expect(reach).not.toBe(0);
    expect(fingerings[0]!.notes[1]).toMatchObject({ string: 1, finger: 1 });
  });
});
