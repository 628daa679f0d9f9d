import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { fingerLine } from '../../../core/fingering/fingerLine.ts';
import { AIMS } from '../../../core/fingering/aims.ts';
import { prepare, withPin } from '../../../core/fingering/prepare.ts';
import { suggest } from '../../../core/fingering/suggest.ts';
import { weightsFor } from '../../../core/fingering/weights/weightsFor.ts';
import { USUAL_HAND } from '../../../core/hand/reach.ts';
import { instrumentNamed } from '../../../core/instruments/instrumentNamed.ts';
import { leastCost } from '../search/everyPath.ts';
import { eighths } from './lines.ts';

const violin = instrumentNamed('violin');
const pitch = fc.integer({ min: 57, max: 86 });
const stop = fc.tuple(fc.integer({ min: 60, max: 74 }), fc.integer({ min: 3, max: 9 })).map(([low, interval]) => [low, low + interval]);
const passages = fc.array(fc.oneof({ weight: 5, arbitrary: pitch }, { weight: 1, arbitrary: stop }), { minLength: 1, maxLength: 6 });
const request = (line: ReturnType<typeof eighths>) => ({ instrument: violin, line, tempo: 90, pins: new Map(), aim: 'usual' as const, hand: USUAL_HAND, players: 1, sliding: 1, weights: weightsFor('violin') });

describe('fingerings of a line', () => {
  it('the first is the cheapest of all by brute force, double stops included', () => {
    fc.assert(fc.property(passages, (pitches) => {
      const prepared = prepare(request(eighths(pitches)));
      fc.pre(prepared.layers.reduce((paths, layer) => paths * layer.states.length, 1) < 2_000_000);
      const [first] = suggest(prepared, 1);
      expect(first!.cost).toBeCloseTo(leastCost(prepared.lattice), 9);
    }), { numRuns: 25 });
  });

  it('the costs by term add up to the cost, for every aim', () => {
    for (const aim of AIMS) {
      const line = eighths([67, 71, 74, 79, 83, 86, 83, 79, [67, 76], 74]);
      for (const fingering of suggest(prepare({ ...request(line), aim }), 3)) {
        expect(Object.values(fingering.terms).reduce((a, b) => a + b, 0)).toBeCloseTo(fingering.cost, 9);
      }
    }
  });

  it('come best first, and no two have string and place of the hand alike throughout', () => {
    const { fingerings } = fingerLine(violin, eighths([71, 74, 78, 81, 83, 81, 78, 74]), 90);
    expect(fingerings).toHaveLength(5);
    fingerings.slice(1).forEach((fingering, i) => expect(fingering.cost).toBeGreaterThanOrEqual(fingerings[i]!.cost));
    const ways = fingerings.map(({ notes }) => notes.map(({ string, finger, position }) => `${string}${finger === 0 ? 'o' : position}`).join());
    expect(new Set(ways).size).toBe(5);
  });

  it('keep every pin', () => {
    fc.assert(fc.property(fc.array(pitch, { minLength: 2, maxLength: 6 }), fc.nat(), fc.integer({ min: 1, max: 4 }), (pitches, at, finger) => {
      const line = eighths(pitches);
      const id = line[at % line.length]!.id;
      const { fingerings, refusals } = fingerLine(violin, line, 90, { pins: new Map([[id, { finger: finger as 1 }]]), best: 3 });
      if (refusals.length > 0) return;
      for (const { notes } of fingerings) expect(notes.find((note) => note.id === id)!.finger).toBe(finger);
    }), { numRuns: 40 });
  });

  it('after one more pin are those of solving with the pin from the start', () => {
    const line = eighths([71, 74, 78, 81, 83, 81, 78, 74, 71, 69, 67, 74, 79, 83, 86, 83]);
    for (const note of line) {
      const again = withPin(prepare(request(line)), note.id, { string: 3 });
      if (!again) continue;
      const anew = prepare({ ...request(line), pins: new Map([[note.id, { string: 3 }]]) });
      const [one, other] = [suggest(again, 1)[0]!, suggest(anew, 1)[0]!];
      expect(one.notes.map(({ place }) => place)).toEqual(other.notes.map(({ place }) => place));
    }
  });

  it('put the two notes of a double stop on two strings', () => {
    fc.assert(fc.property(stop, (pitches) => {
      const { fingerings } = fingerLine(violin, eighths([pitches]), 60, { best: 3 });
      for (const { notes } of fingerings) if (notes.length === 2) expect(Math.abs(notes[0]!.string - notes[1]!.string)).toBe(1);
    }));
  });

  it('a note below the instrument is refused by name and the rest is fingered', () => {
    const { fingerings, refusals } = fingerLine(violin, eighths([67, 40, 71]), 90, { best: 1 });
    expect(refusals.map(({ note }) => note)).toEqual(['n1']);
    expect(fingerings[0]!.notes.map(({ id }) => id)).toEqual(['n0', 'n2']);
  });

  it('of a chord that needs one string twice the last note is refused', () => {
    const { refusals } = fingerLine(violin, eighths([[55, 57]]), 90, { best: 1 });
    expect(refusals).toHaveLength(1);
  });

  it('the viola fingers a line as the violin does a fifth higher', () => {
    const pitches = [67, 71, 74, 76, 79, 83, 79, 76];
    const plain = (line: ReturnType<typeof eighths>, name: 'violin' | 'viola') => fingerLine(instrumentNamed(name), line, 90, { best: 1 }).fingerings[0]!.notes.map(({ string, finger, position }) => [string, finger, position]);
    expect(plain(eighths(pitches.map((midi) => midi - 7), 'viola'), 'viola')).toEqual(plain(eighths(pitches), 'violin'));
  });
});
