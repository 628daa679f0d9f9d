import { describe, expect, it } from 'vitest';
import { acrossAt, boardShapes } from '../../../client/views/stand/board/boardShapes.ts';
import type { HandMoment } from '../../../core/fingering/explain/handPath.ts';
import { placeOnString } from '../../../core/hand/place.ts';
import { instrumentNamed } from '../../../core/instruments/instrumentNamed.ts';

const violin = instrumentNamed('violin');
const cello = instrumentNamed('cello');
const bass = instrumentNamed('double-bass');
/** A hand whose finger 1 stands that many semitones above the open string, and the note its finger stops. */
function moment({ name, stringLength, hand, positionsBy }: typeof violin, one: number, finger: HandMoment['finger'], above: number | null, string = 2): HandMoment {
  const mm = (semitones: number): number => placeOnString(semitones, stringLength);
  return { note: name, string, finger, position: 1, stopped: above === null ? null : mm(above), low: mm(one), high: mm(one + (positionsBy === 'letter' ? 5 : hand[3]!)), kind: 'stays', slide: 0, follows: false };
}
const named = (shapes: ReturnType<typeof boardShapes>): string[] => shapes.fingers.map(({ finger, sounding }) => (sounding ? `${finger}!` : finger));

describe('the fingerboard in mm', () => {
  it('has an octave in the middle of every instrument’s string, and its board ends before the bridge', () => {
    for (const instrument of [violin, instrumentNamed('viola'), cello, bass]) {
      const shapes = boardShapes(instrument, moment(instrument, 12, 1, 12));
      expect(shapes.fingers.find(({ sounding }) => sounding)!.mm).toBeCloseTo(instrument.stringLength / 2, 6);
      expect(shapes.end).toBeGreaterThan(instrument.stringLength / 2);
      expect(shapes.end).toBeLessThan(instrument.stringLength);
      expect(shapes.ticks.at(-1)).toBeLessThanOrEqual(shapes.length);
      expect(shapes.ticks.length).toBeLessThanOrEqual(8);
    }
  });

  it('puts the plain fingers of first position on B, C sharp and E, the third between D and D sharp, of the violin’s A string', () => {
    const { fingers } = boardShapes(violin, moment(violin, 2, 2, 4));
    // L (1 - 2^(-n/12)) for 2, 4 and 7 semitones of 328 mm, worked out by hand; the third finger of the plain hand lies between D and D sharp, at 82.3 and 96.1.
    const rounded = fingers.map(({ mm }) => Math.round(mm * 10) / 10);
    expect([rounded[0], rounded[1], rounded[3]]).toEqual([35.8, 67.7, 109.1]);
    expect(rounded[2]).toBeGreaterThan(82.3);
    expect(rounded[2]).toBeLessThan(96.1);
    expect(fingers.map(({ sounding }) => sounding)).toEqual([false, true, false, false]);
  });

  it('keeps the outer strings apart as they spread toward the bridge, the highest above', () => {
    const shapes = boardShapes(violin, moment(violin, 2, 1, 2));
    const spread = (mm: number): number => acrossAt(shapes, 4, mm) - acrossAt(shapes, 1, mm);
    expect(spread(0)).toBeGreaterThan(0);
    expect(spread(shapes.length)).toBeGreaterThan(spread(0));
    expect(shapes.strings.map(({ name }) => name)).toEqual(['E', 'A', 'D', 'G']);
    expect(shapes.strings.map(({ thick }) => thick)).toEqual([...shapes.strings.map(({ thick }) => thick)].sort((a, b) => a - b));
  });

  it('measures a finger that leaves the hand from the frame’s edge, up and back', () => {
    const up = boardShapes(violin, moment(violin, 2, 4, 9)).reach!;
    expect(up.mm).toBeCloseTo(placeOnString(9, 328) - placeOnString(7, 328), 6);
    const back = boardShapes(violin, moment(violin, 4, 1, 2)).reach!;
    expect(back.mm).toBeCloseTo(placeOnString(4, 328) - placeOnString(2, 328), 6);
    expect(boardShapes(violin, moment(violin, 2, 3, 5)).reach).toBeNull();
  });

  it('lets no finger lie past the one that reaches', () => {
    expect(named(boardShapes(violin, moment(violin, 2, 3, 8)))).toEqual(['1', '2', '3!']);
    expect(named(boardShapes(violin, moment(violin, 4, 1, 3)))).toEqual(['1!', '2', '3', '4']);
  });

  it('draws no finger over the sounding one', () => {
    for (const instrument of [violin, instrumentNamed('viola'), cello, bass]) for (const above of [3, 4, 5, 6, 7]) for (const finger of [1, 2, 3, 4] as const) {
      const { fingers, length } = boardShapes(instrument, moment(instrument, 3, finger, above));
      const black = fingers.find(({ sounding }) => sounding)!;
      for (const other of fingers) if (other !== black) expect(Math.abs(other.mm - black.mm)).toBeGreaterThanOrEqual(length * 0.0299);
    }
  });

  it('has no sounding finger on an open string, while the hand stays where it was', () => {
    const shapes = boardShapes(violin, moment(violin, 2, 0, null));
    expect(shapes.open).toBe(true);
    expect(shapes.fingers.some(({ sounding }) => sounding)).toBe(false);
    expect(shapes.fingers).toHaveLength(4);
  });

  it('plays the bass with 1, 2 and 4, or with 3 where 3 is marked', () => {
    expect(named(boardShapes(bass, moment(bass, 2, 2, 3)))).toEqual(['1', '2!', '4']);
    expect(named(boardShapes(bass, moment(bass, 11, 3, 13)))).toEqual(['1', '2', '3!']);
  });

  it('lays the cello’s thumb across a tone below finger 1 in thumb position, and not in the neck positions', () => {
    const high = boardShapes(cello, moment(cello, 14, 'thumb', 12));
    expect(named(high)).toEqual(['thumb!', '1', '2', '3']);
    expect(high.fingers[0]!.mm).toBeCloseTo(345, 6);
    expect(high.reach).toBeNull();
    expect(named(boardShapes(cello, moment(cello, 14, 1, 14)))).toEqual(['thumb', '1!', '2', '3']);
    expect(boardShapes(cello, moment(cello, 4, 1, 4)).thumb).toBe(false);
  });
});
