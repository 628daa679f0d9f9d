import { describe, expect, it } from 'vitest';
import { beatOf, metreOf } from '../../../core/music/metre.ts';
import { quarters } from '../../../core/music/time.ts';
import { smallPart } from '../../support/smallPart.ts';

const [measure] = smallPart().measures;
const timed = (beats: string, beatType: string) => ({ ...measure!, time: { beats, beatType } });

describe('the beat of a measure (common practice, no source)', () => {
  it.each([
    ['4', '4', 1],
    ['2', '2', 2],
    ['6', '8', '3/2'],
    ['15', '8', '3/2'],
    ['3', '8', '1/2'],
    ['9', '16', '3/4'],
    ['6', '4', 1],
    ['3+2', '8', '1/2'],
    ['4', 'none', 1],
  ])('in %s/%s is %s quarters', (beats, beatType, beat) => {
    expect(beatOf(timed(beats, beatType))).toBe(beat);
  });

  it('is the same, rounded, to whoever asks for the whole metre', () => {
    for (const [beats, beatType] of [['4', '4'], ['12', '8'], ['15', '16'], ['3', '8']] as const) {
      const metre = metreOf(timed(beats, beatType));
      expect(metre.beat).toBe(quarters(beatOf(timed(beats, beatType))));
      expect(metre.parts).toBe(beats === '12' || beats === '15' ? 3 : 2);
    }
  });

  it('without a time signature is a quarter, and the measure as long as its notes', () => {
    expect(beatOf({ time: null })).toBe(1);
    expect(metreOf({ ...measure!, time: null }).whole).toBe(quarters(measure!.length));
  });
});
