import { describe, expect, it } from 'vitest';
import { USUAL_HAND } from '../../../core/hand/reach.ts';
import { instrumentNamed } from '../../../core/instruments/instrumentNamed.ts';
import { lineFrom } from '../../../core/fingering/notesInput.ts';
import { isByMoves, prepare, withPin } from '../../../core/fingering/prepare.ts';
import { suggest } from '../../../core/fingering/suggest.ts';
import { unusualSteps } from '../../../core/fingering/unusual.ts';
import { weightsFor } from '../../../core/fingering/weights/weightsFor.ts';

const violin = instrumentNamed('violin');
const scale = [69, 71, 73, 74, 76, 78, 80, 81, 83, 85, 86, 88, 90, 92, 93];
const { line } = lineFrom({ instrument: 'violin', tempo: 90, notes: [...scale, ...scale.toReversed()].map((pitch, i) => ({ id: `n${i}`, pitch, measure: 1 + (i >> 2), onset: i % 4, duration: 1 })) });
const prepared = prepare({ instrument: violin, line, tempo: 90, pins: new Map(), aim: 'usual', hand: USUAL_HAND, players: 1, sliding: 1, weights: weightsFor('violin') });

describe('what professionals would do otherwise', () => {
  it('is counted near pins on notes that can be played, and on no others', () => {
    const tooLow = lineFrom({ instrument: 'violin', tempo: 90, notes: [...scale, 40].map((pitch, i) => ({ id: `n${i}`, pitch, measure: 1, onset: i, duration: 1 })) }).line;
    const refused = prepare({ ...prepared.request, line: tooLow, pins: new Map([['n15', { finger: 1 }]]) });
    expect(refused.refusals.map(({ note }) => note)).toEqual(['n15']);
    expect(refused.nearPins.size).toBe(0);
  });

  it('weighs a move of the hand by the probability of any move there, counted one by one', () => {
    const { layers, marginals } = prepared;
    for (let i = 1; i < layers.length; i += 1) {
      const moves = unusualSteps(layers, marginals, i, true);
      const size = layers[i]!.states.length;
      const isMove = (s: number): boolean => layers[i - 1]!.states[Math.floor(s / size)]![0]!.position !== layers[i]!.states[s % size]![0]!.position;
      const moved = marginals.steps[i]!.reduce((sum, p, s) => sum + (isMove(s) ? p : 0), 0);
      const cost = new Set(Array.from(moves, (value, s) => `${isMove(s)} ${(value / (isMove(s) ? 1 - moved : moved)).toFixed(6)}`));
      expect([...cost].filter((key) => key.startsWith('true')).length).toBeLessThanOrEqual(1);
      expect([...cost].filter((key) => key.startsWith('false')).length).toBeLessThanOrEqual(1);
      expect(Math.min(...moves)).toBeGreaterThanOrEqual(0);
    }
  });

  it('counts note by note near a pin, and where the hand moves further off', () => {
    const pinned = withPin(prepared, 'n2', { finger: 2, string: 2 })!;
    expect([...pinned.nearPins].sort((a, b) => a - b)).toEqual([0, 1, 2, 3, 4, 5, 6, 7, 8, 9, 10, 11]);
    expect([4, 20].map((at) => isByMoves(pinned, at))).toEqual([false, true]);
    expect([...unusualSteps(pinned.layers, pinned.marginals, 4, false)]).toEqual(Array.from(pinned.marginals.steps[4]!, (p) => 1 - p));
    expect(Math.max(...unusualSteps(pinned.layers, pinned.marginals, 20, true))).toBeGreaterThan(0);
  });

  it('is what the costs by term tell of steps near a pin and of moves further off', () => {
    const { terms } = suggest(withPin(prepared, 'n2', { finger: 2, string: 2 })!, 1)[0]!;
    expect(terms['unusual-step']).toBeGreaterThan(0);
    expect(terms['unusual-move']).toBeGreaterThan(0);
  });
});
