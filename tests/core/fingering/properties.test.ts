import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { AIMS } from '../../../core/fingering/aims.ts';
import { fingerLine } from '../../../core/fingering/fingerLine.ts';
import type { Place } from '../../../core/fingering/frame.ts';
import { lineFrom, type NotesInput } from '../../../core/fingering/notesInput.ts';
import { keepsTo, type Pin } from '../../../core/fingering/pin.ts';
import { positionNumber } from '../../../core/fingering/positionNumber.ts';
import { prepare } from '../../../core/fingering/prepare.ts';
import { suggest } from '../../../core/fingering/suggest.ts';
import { weightsFor } from '../../../core/fingering/weights/weightsFor.ts';
import { USUAL_HAND } from '../../../core/hand/reach.ts';
import { instrumentNamed } from '../../../core/instruments/instrumentNamed.ts';
import type { Instrument } from '../../../core/instruments/instrument.ts';
import type { InstrumentName } from '../../../core/music/part.ts';
import { everyPath, leastCost } from '../search/everyPath.ts';
import { eighths } from './lines.ts';

const INSTRUMENTS: readonly InstrumentName[] = ['violin', 'viola', 'cello', 'double-bass'];

/** Up to `most` notes or double stops within the first two octaves above the lowest string. */
function passages(name: InstrumentName, most: number): fc.Arbitrary<(number | number[])[]> {
  const lowest = instrumentNamed(name).openStrings[3];
  const note = fc.integer({ min: lowest, max: lowest + 30 });
  const stop = fc.tuple(fc.integer({ min: lowest + 2, max: lowest + 20 }), fc.integer({ min: 3, max: 9 })).map(([low, interval]) => [low, low + interval]);
  return fc.array(fc.oneof({ weight: 4, arbitrary: note }, { weight: 1, arbitrary: stop }), { minLength: 1, maxLength: most });
}

const prepared = (name: InstrumentName, pitches: (number | number[])[], aim: (typeof AIMS)[number] = 'usual', pins: ReadonlyMap<string, Pin> = new Map()) =>
  prepare({ instrument: instrumentNamed(name), line: eighths(pitches, name), tempo: 90, pins, aim, hand: USUAL_HAND, players: 1, sliding: 1, weights: weightsFor(name) });

const pathsOf = ({ layers }: ReturnType<typeof prepared>): number => layers.reduce((paths, { states }) => paths * states.length, 1);
const wayOf = (instrument: Instrument, places: readonly Place[]): string => places.map((place) => `${place.string}${place.finger === 0 ? 'o' : positionNumber(instrument, place)}`).join();

/** Shares of the professionals below which a step is left out while five ways remain; none of the bass are known. */
const SHARES = [0.02, 0.002, 0.0002, 0];

/** The cheapest cost of each way, by brute force over the paths whose every step, or the first fingering's there, is taken by at least a share of those who hold the note before so. */
function cheapestWays(ready: ReturnType<typeof prepared>, share: number): number[] {
  const { lattice, layers, marginals, balance, request } = ready;
  const all = everyPath(lattice);
  const first = all[0]!.states;
  const usual = (states: readonly number[], i: number): boolean => {
    if (balance.trust < 1 || (states[i] === first[i] && (i === 0 || states[i - 1] === first[i - 1]))) return true;
    if (i === 0) return marginals.states[0]![states[0]!]! >= share;
    return marginals.steps[i]![states[i - 1]! * layers[i]!.states.length + states[i]!]! >= share * marginals.states[i - 1]![states[i - 1]!]!;
  };
  const cheapest = new Map<string, number>();
  for (const { states, cost } of all) {
    const way = states.map((state, i) => wayOf(request.instrument, layers[i]!.states[state]!)).join(' ');
    if (!cheapest.has(way) && states.every((_, i) => usual(states, i))) cheapest.set(way, cost);
  }
  return [...cheapest.values()];
}

describe.each(INSTRUMENTS)('on the %s, by brute force', (name) => {
  it('the first fingering of up to six notes is as cheap as any, whatever the aim', () => {
    fc.assert(fc.property(passages(name, 6), fc.constantFrom(...AIMS), (pitches, aim) => {
      const ready = prepared(name, pitches, aim);
      fc.pre(ready.layers.length > 0 && pathsOf(ready) < 400_000);
      expect(suggest(ready, 1)[0]!.cost).toBeCloseTo(leastCost(ready.lattice), 9);
    }), { numRuns: 15 });
  });

  it('the five best are the five cheapest ways, in order, among what is done more than hardly ever', () => {
    fc.assert(fc.property(passages(name, 4), (pitches) => {
      const ready = prepared(name, pitches);
      fc.pre(ready.layers.length > 0 && pathsOf(ready) < 30_000);
      const found = suggest(ready, 5);
      const expected = SHARES.map((share) => cheapestWays(ready, share)).find((ways, i) => ways.length >= 5 || i === SHARES.length - 1)!.slice(0, 5);
      expect(found).toHaveLength(expected.length);
      found.forEach(({ cost }, i) => expect(cost).toBeCloseTo(expected[i]!, 9));
    }), { numRuns: 15 });
  });

  it('every pin of finger, string or position is kept, or its note is refused', () => {
    const pins = fc.record({ finger: fc.integer({ min: 0, max: 4 }) as fc.Arbitrary<0 | 1 | 2 | 3 | 4>, string: fc.integer({ min: 1, max: 4 }), position: fc.integer({ min: 1, max: 5 }) }, { requiredKeys: [] });
    let kept = 0;
    fc.assert(fc.property(passages(name, 6), fc.array(pins, { minLength: 6, maxLength: 6 }), fc.integer({ min: 1, max: 3 }), (pitches, each, every) => {
      const asked = new Map(each.flatMap((pin, i): [string, Pin][] => (i % every === 0 && i < pitches.length ? [[`n${i}`, pin]] : [])));
      const ready = prepared(name, pitches, 'usual', asked);
      const refused = new Set(ready.refusals.map(({ note }) => note));
      for (const { notes } of suggest(ready, 3)) {
        for (const [id, pin] of asked) {
          const note = notes.find((other) => other.id === id);
          expect(note !== undefined).toBe(!refused.has(id));
          if (note) expect(keepsTo(instrumentNamed(name), note.place, pin)).toBe(true);
          if (note && pin.string !== undefined) expect(note.place.string).toBe(pin.string);
          if (note && pin.finger !== undefined) expect(note.place.finger).toBe(pin.finger);
          if (note) kept += 1;
        }
      }
    }), { numRuns: 120 });
    expect(kept).toBeGreaterThan(15);
  });

  it('the octave a spelling is written in changes nothing, as parts transpose', () => {
    const notes = (octave: number): NotesInput['notes'] => ['D', 'E', 'F#', 'G', 'A', 'B'].map((letter, i) => ({ id: `n${i}`, pitch: instrumentNamed(name).openStrings[2] + [7, 9, 11, 12, 14, 16][i]!, spelling: `${letter}${octave}`, measure: 1, onset: i / 2, duration: 0.5 }));
    const fingered = (octave: number) => fingerLine(instrumentNamed(name), lineFrom({ instrument: name, tempo: 90, notes: notes(octave) }).line, 90);
    expect(fingered(5)).toEqual(fingered(4));
  });
});

// The hand's costs know no pitch: only where a note lies on its string.
describe('an octave lower on strings an octave lower', () => {
  it('the hand does the same', () => {
    const bass = instrumentNamed('double-bass');
    const lower = { ...bass, openStrings: bass.openStrings.map((midi) => midi - 12) as [number, number, number, number] };
    fc.assert(fc.property(passages('double-bass', 6), (pitches) => {
      const down = pitches.map((pitch) => (typeof pitch === 'number' ? pitch - 12 : pitch.map((midi) => midi - 12)));
      const plain = (result: ReturnType<typeof fingerLine>) => result.fingerings.map(({ notes }) => notes.map(({ id, string, finger, position, step }) => ({ id, string, finger, position, kind: step.kind, mm: step.mm })));
      expect(plain(fingerLine(lower, eighths(down, 'double-bass'), 90))).toEqual(plain(fingerLine(bass, eighths(pitches, 'double-bass'), 90)));
    }), { numRuns: 25 });
  });
});
