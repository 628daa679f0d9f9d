import { describe, expect, it } from 'vitest';
import fc from 'fast-check';
import { markName, placeMarks, type ShownMark } from '../../../../core/engraving/marks/placeMarks.ts';
import { halfWidthOf, heightOf } from '../../../../core/engraving/marks/figures.ts';
import { outline } from '../../../../core/engraving/marks/skyline.ts';
import type { Geometry } from '../../../../core/engraving/geometry.ts';

/** One staff with its lines from y = 10 to 14 and three notes in one measure. */
const geometry: Geometry = {
  width: 40, height: 24, top: 10, bottom: 14,
  measures: [{ ordinal: 1, x0: 0, x1: 40 }],
  notes: { low: { x: 10, y: 13, measure: 1 }, high: { x: 20, y: 7, measure: 1 }, long: { x: 30, y: 12, measure: 1 } },
  near: [{ x0: 9.4, x1: 10.6, y0: 12.5, y1: 13.5 }, { x0: 19.4, x1: 20.6, y0: 6.5, y1: 7.5 }, { x0: 29.4, x1: 30.6, y0: 11.5, y1: 12.5 }],
  high: [], low: [],
};
const shown = (note: string, value: ShownMark['value'], more: Partial<ShownMark> = {}): ShownMark => ({ note, value, seats: 'all', state: 'proposed', ...more });
const two: ShownMark['value'] = { kind: 'finger', finger: 2 };
const down: ShownMark['value'] = { kind: 'bow', bow: 'down' };
const y = (marks: ShownMark[], name: string) => placeMarks(geometry, marks).signs.find((sign) => sign.name === name)!.y;

describe('marks over a staff', () => {
  it('stand above the staff, and above the note where it is higher', () => {
    expect(y([shown('low', two)], 'finger:2')).toBeLessThan(10);
    expect(y([shown('high', two)], 'finger:2')).toBeLessThan(6.5);
  });

  it('go outward from the note: figure, bow sign, string, words, in whatever order they were written', () => {
    const marks = [shown('low', { kind: 'text', text: 'point' }), shown('low', { kind: 'string', string: 1 }), shown('low', down), shown('low', two)];
    const heights = ['finger:2', 'bow:down', 'string:1', 'text:point'].map((name) => y(marks, name));
    expect(heights).toEqual([...heights].sort((a, b) => b - a));
    expect(new Set(heights).size).toBe(4);
  });

  it('the sign of a reach stands beside its figure, or over it where a neighbour\'s figure stands there', () => {
    const reach: ShownMark['value'] = { kind: 'reach', reach: 'extension' };
    const placed = (neighbour: number) => {
      const near = { ...geometry, notes: { ...geometry.notes, next: { x: neighbour, y: 13, measure: 1 } } };
      const { signs } = placeMarks(near, [shown('low', two), shown('low', reach), shown('next', { kind: 'finger', finger: 3 })]);
      return signs.find((sign) => sign.name === 'reach:extension')!;
    };
    expect(placed(14).x).toBeGreaterThan(11);
    expect(placed(11.8)).toMatchObject({ x: 10 });
    expect(placed(11.8).y).toBeLessThan(placed(14).y);
  });

  it('words that would leave the line end with it', () => {
    const [words] = placeMarks(geometry, [shown('long', { kind: 'text', text: 'near the point' })]).signs;
    expect(words!.x1).toBeLessThanOrEqual(geometry.width);
    expect(words!.x).toBe(words!.x0);
  });

  it('an inside player\'s own figure stands below the staff, but never what concerns the bow', () => {
    const inside = { seats: ['1i', '2i'] };
    expect(y([shown('low', two, inside)], 'finger:2')).toBeGreaterThan(14);
    expect(y([shown('low', down, inside)], 'bow:down')).toBeLessThan(10);
    expect(y([shown('low', { kind: 'change', after: 0 }, inside)], 'change:0')).toBeLessThan(10);
    expect(y([shown('low', two, { seats: ['1o', '1i'] })], 'finger:2')).toBeLessThan(10);
  });

  it('a reach stands beside its figure, not over it', () => {
    const { signs } = placeMarks(geometry, [shown('low', { kind: 'reach', reach: 'extension' }), shown('low', two)]);
    const [figure, reach] = [signs.find(({ name }) => name === 'finger:2')!, signs.find(({ name }) => name === 'reach:extension')!];
    expect(reach.y).toBe(figure.y);
    expect(reach.x).toBeGreaterThan(figure.x + 1);
  });

  it('a change inside a long note stands as far along as it lies in time', () => {
    const at = (share: number) => placeMarks(geometry, [shown('long', { kind: 'change', after: 1 }, { share })]).signs[0]!.x;
    expect(at(0)).toBe(30);
    expect(at(0.5)).toBe(35);
  });

  it('one finger that takes over from another is two figures side by side', () => {
    const { signs } = placeMarks(geometry, [shown('low', { kind: 'finger', finger: 3, substitution: 1 })]);
    expect(signs.map(({ stroke }) => stroke)).toEqual(['3', '1']);
    expect(signs[1]!.y).toBe(signs[0]!.y);
  });

  it('what is rubbed out shows what it was, struck', () => {
    const [sign] = placeMarks(geometry, [shown('low', { kind: 'none', slot: 'finger' }, { rubs: two })]).signs;
    expect(sign).toMatchObject({ stroke: '2', state: 'aside', name: 'none:finger' });
  });

  it('spectacles stand outside everything, one pair a note', () => {
    const finding = { note: 'low', rule: 'a', lens: 'both' as const };
    const { signs, spectacles } = placeMarks(geometry, [shown('low', two), shown('low', down)], [finding, { ...finding, rule: 'b' }]);
    expect(spectacles).toHaveLength(1);
    expect(spectacles[0]!.y).toBeLessThan(Math.min(...signs.map((sign) => sign.y - heightOf(sign.stroke!))));
  });

  it('signs of neighbouring places never cover each other', () => {
    const kinds: ShownMark['value'][] = [two, down, { kind: 'string', string: 3 }, { kind: 'retake' }, { kind: 'harmonic', harmonic: 'natural' }];
    const any = fc.array(fc.record({ note: fc.constantFrom('low', 'high', 'long'), kind: fc.nat(4) }), { maxLength: 12 });
    fc.assert(
      fc.property(any, (picks) => {
        const once = new Map(picks.map(({ note, kind }) => [`${note} ${kind}`, shown(note, kinds[kind]!)]));
        const boxes = placeMarks(geometry, [...once.values()]).signs.map((sign) => ({ x0: sign.x - halfWidthOf(sign.stroke!), x1: sign.x + halfWidthOf(sign.stroke!), y0: sign.y - heightOf(sign.stroke!), y1: sign.y }));
        for (const [i, a] of boxes.entries()) for (const b of boxes.slice(i + 1)) expect(a.x0 < b.x1 && b.x0 < a.x1 && a.y0 < b.y1 && b.y0 < a.y1).toBe(false);
      }),
    );
  });

  it('a mark on a note of another system is not drawn', () => {
    expect(placeMarks(geometry, [shown('elsewhere', two)]).signs).toEqual([]);
  });

  it('names a mark by its kind and value', () => {
    expect([two, { kind: 'retake' } as const, { kind: 'change', after: '3/2' } as const].map(markName)).toEqual(['finger:2', 'retake', 'change:3/2']);
  });
});

describe('the outline', () => {
  it('reaches as far as the furthest thing painted between two x', () => {
    const above = outline(20, 10, 'above');
    above.paint(3, 5, 6);
    expect([above.reach(0, 2), above.reach(4, 10), above.extreme()]).toEqual([10, 6, 6]);
    const below = outline(20, 14, 'below');
    below.paint(3, 5, 16);
    below.paint(3, 5, 15);
    expect(below.reach(4, 4)).toBe(16);
  });
});
