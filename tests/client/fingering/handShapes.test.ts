import { describe, expect, it } from 'vitest';
import { handRange, handShapes } from '../../../client/views/stand/offers/handShapes.ts';
import type { Geometry } from '../../../core/engraving/geometry.ts';
import type { HandMoment } from '../../../core/fingering/explain/handPath.ts';

const geometry: Geometry = {
  width: 60, height: 10, top: 0, bottom: 4, near: [], high: [], low: [], measures: [{ ordinal: 1, x0: 2, x1: 50 }],
  notes: { a: { x: 5, y: 2, measure: 1 }, b: { x: 15, y: 2, measure: 1 }, c: { x: 25, y: 2, measure: 1 }, d: { x: 35, y: 2, measure: 1 } },
};
const moment = (note: string, more: Partial<HandMoment> = {}): HandMoment => ({ note, string: 2, finger: 1, position: 1, stopped: 36, low: 31, high: 90, kind: 'stays', slide: 0, follows: false, ...more });
const high = { position: 3, stopped: 82, low: 82, high: 130 };
const ysOf = (d: string): number[] => [...d.matchAll(/[ML](-?[\d.]+) (-?[\d.]+)/g)].map(([, , y]) => Number(y));

describe('the picture of the hand', () => {
  it('is an even band while the hand stays, with nothing else', () => {
    const shapes = handShapes([moment('a'), moment('b', { finger: 3, stopped: 82 }), moment('c')], geometry)!;
    expect(new Set(ysOf(shapes.band)).size).toBe(2);
    expect(shapes.wedges).toEqual([]);
    expect(shapes.reaches).toEqual([]);
    expect(shapes.positions).toHaveLength(1);
  });

  it('stands on the notes’ own x, the higher place higher, one line for each step down from the highest string', () => {
    const shapes = handShapes([moment('a', { string: 4 }), moment('b', { ...high, string: 1 })], geometry)!;
    expect(shapes.notes.map(({ x, lines }) => [x, lines])).toEqual([[5, 4], [15, 1]]);
    expect(shapes.notes[1]!.y).toBeLessThan(shapes.notes[0]!.y);
  });

  it('slopes before the note a shift leads to, and as wide as it is heard', () => {
    const [quiet, loud] = [0.3, 0.9].map((slide) => handShapes([moment('a'), moment('b', { ...high, slide })], geometry)!.wedges[0]!);
    const width = (d: string): number => { const [, to] = /L[\d.]+ (-?[\d.]+)V(-?[\d.]+)/.exec(d)!.slice(1).map(Number); return to! - Number(/L[\d.]+ (-?[\d.]+)V/.exec(d)![1]); };
    expect(quiet!.silent || loud!.silent).toBe(false);
    expect(width(loud!.d)).toBeGreaterThan(width(quiet!.d));
    expect(handShapes([moment('a'), moment('b', high)], geometry)!.wedges[0]).toMatchObject({ silent: true });
  });

  it('lets a finger reach out of the band first where the hand follows late, and nothing slides', () => {
    const shapes = handShapes([moment('a'), moment('b', { finger: 4, stopped: 105, kind: 'delayed-shift' }), moment('c', { ...high, follows: true })], geometry)!;
    expect(shapes.reaches).toHaveLength(1);
    expect(shapes.wedges).toEqual([]);
    const xs = [...shapes.band.matchAll(/[ML](-?[\d.]+) /g)].map(([, x]) => Number(x));
    expect(xs.some((x) => x > 25 && x < 35)).toBe(true);
  });

  it('has a scale whose numbers keep apart, over a short stretch and a long one', () => {
    for (const path of [[moment('a')], [moment('a'), moment('b', { stopped: 230, low: 200, high: 240 })]]) {
      const ys = handShapes(path, geometry)!.ticks.map(({ y }) => y);
      expect(ys.length).toBeGreaterThan(1);
      for (let i = 1; i < ys.length; i++) expect(ys[i - 1]! - ys[i]!).toBeGreaterThan(1.2);
    }
  });

  it('writes every finger where there is room, and in a crowd only those a player needs to read', () => {
    const crowd: Geometry = { ...geometry, notes: { a: { x: 5, y: 2, measure: 1 }, b: { x: 6.5, y: 2, measure: 1 }, c: { x: 8, y: 2, measure: 1 }, d: { x: 30, y: 2, measure: 1 } } };
    const path = ['a', 'b', 'c', 'd'].map((note) => moment(note));
    const written = (where: Geometry, told?: Set<string>): string[] => handShapes(path, where, told && { told })!.notes.filter(({ figure }) => figure).map(({ note }) => note);
    expect(written(crowd, new Set(['b']))).toEqual(['b', 'd']);
    expect(written(geometry, new Set(['b']))).toEqual(['a', 'b', 'c', 'd']);
    expect(written(crowd)).toEqual(['a', 'b', 'c', 'd']);
  });

  it('stands on one scale with another where a range is given', () => {
    const paths = [[moment('a')], [moment('a'), moment('b', { ...high, high: 150 })]];
    const range = handRange(paths.flat());
    const [one, other] = paths.map((path) => handShapes(path, geometry, { range })!);
    expect(one!.notes[0]!.y).toBe(other!.notes[0]!.y);
    expect(one!.ticks).toEqual(other!.ticks);
    expect(range[0]).toBeLessThan(31);
    expect(range[1]).toBeGreaterThan(150);
  });

  it('names a position clear of the figure it begins with', () => {
    const shapes = handShapes([moment('a', { finger: 4, stopped: 90 }), moment('b', { ...high, finger: 1 })], geometry)!;
    shapes.positions.forEach(({ y }, i) => expect(y).toBeLessThanOrEqual(shapes.notes[i]!.y - 1));
    for (const { y } of shapes.positions) expect(y).toBeGreaterThan(1.2);
  });

  it('rules the notes that are played differently, neighbours as one', () => {
    const { differs } = handShapes(['a', 'b', 'c', 'd'].map((note) => moment(note)), geometry, { differs: new Set(['a', 'b', 'd']) })!;
    expect(differs.map(({ x0, x1 }) => [x0 < 5 && x1 > 15, x0 > 25])).toEqual([[true, false], [false, true]]);
  });

  it('draws open strings under the band', () => {
    const shapes = handShapes([moment('a'), moment('b', { stopped: null, finger: 0, string: 1 })], geometry)!;
    expect(shapes.notes[1]!.y).toBeGreaterThan(Math.max(...ysOf(shapes.band)));
  });

  it('leaves notes of another line to that line', () => {
    expect(handShapes([moment('elsewhere')], geometry)).toBeNull();
    expect(handShapes([moment('a'), moment('elsewhere')], geometry)!.notes).toHaveLength(1);
  });
});
