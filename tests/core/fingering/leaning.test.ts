import { describe, expect, it } from 'vitest';
import { lineFrom } from '../../../core/fingering/notesInput.ts';
import type { Pin } from '../../../core/fingering/pin.ts';
import { prepare, withPin } from '../../../core/fingering/prepare.ts';
import { suggest } from '../../../core/fingering/suggest.ts';
import { weightsFor } from '../../../core/fingering/weights/weightsFor.ts';
import { USUAL_HAND } from '../../../core/hand/reach.ts';
import { violin } from '../../../core/instruments/violin.ts';

/** A figure, eight other notes, and the figure again. */
const MIDI = [69, 71, 72, 74, 76, 74, 72, 71, 62, 64, 65, 67, 60, 62, 64, 65, 69, 71, 72, 74, 76, 74, 72, 71];
const { line } = lineFrom({ instrument: 'violin', tempo: 90, notes: MIDI.map((pitch, i) => ({ id: `n${i}`, pitch, measure: 1 + (i >> 3), onset: (i % 8) / 2, duration: 0.5 })) });
const request = { instrument: violin, line, tempo: 90, pins: new Map(), aim: 'usual' as const, hand: USUAL_HAND, players: 1, sliding: 1, weights: weightsFor('violin') };
const PIN = { finger: 1 as const, string: 3, position: 2 };

const places = (prepared: ReturnType<typeof prepare>): string[] => suggest(prepared, 1)[0]!.notes.map(({ place }) => `${place.string}.${place.position}.${place.finger}`);

describe('a pin', () => {
  const free = prepare(request);
  const pinned = withPin(free, 'n3', { finger: 4, string: 3, position: 5 })!;

  it('is kept, and makes its place likelier where the same figure returns', () => {
    const at = (prepared: ReturnType<typeof prepare>, note: number): number => {
      const layer = prepared.layers[note]!;
      return layer.states.reduce((sum, [place], s) => sum + (place!.string === 3 && place!.position === 5 && place!.finger === 4 ? prepared.marginals.states[note]![s]! : 0), 0);
    };
    expect(places(pinned)[3]).toBe('3.5.4');
    expect(at(pinned, 19)).toBeGreaterThan(10 * at(free, 19));
  });

  it('given from the start says the same as one set afterwards', () => {
    const pins = new Map<string, Pin>([['n3', { finger: 4 as const, string: 3, position: 5 }], ['n10', PIN]]);
    const again = withPin(pinned, 'n10', PIN)!;
    const anew = prepare({ ...request, pins });
    expect(places(again)).toEqual(places(anew));
    again.layers.forEach((layer, i) => {
      const kept = layer.states.map((_, s) => again.marginals.states[i]![s]!).filter((p) => p > 0);
      const other = [...anew.marginals.states[i]!].filter((p) => p > 0);
      expect(kept.length).toBe(other.length);
      kept.forEach((p, s) => expect(p).toBeCloseTo(other[s]!, 9));
    });
  });

  it('that a chord cannot hold beside the pin of its other note is refused, and the line stays solved', () => {
    const chord = lineFrom({ instrument: 'violin', tempo: 90, notes: [{ id: 'a', pitch: 60, measure: 1, onset: 0, duration: 1 }, { id: 'low', pitch: 62, measure: 1, onset: 1, duration: 1 }, { id: 'high', pitch: 71, measure: 1, onset: 1, duration: 1 }] }).line;
    const low = withPin(prepare({ ...request, line: chord }), 'low', { string: 3, position: 1, finger: 0 })!;
    expect(withPin(low, 'high', { string: 3 })).toBeNull();
    const lowest = withPin(prepare({ ...request, line: chord }), 'low', { string: 4 })!;
    expect(withPin(lowest, 'high', { string: 2 })).toBeNull();
    expect(places(withPin(lowest, 'high', { string: 3 })!).slice(1).map((place) => place[0])).toEqual(['4', '3']);
  });
});
