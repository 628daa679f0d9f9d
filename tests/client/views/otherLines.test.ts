import { describe, expect, it } from 'vitest';
import type { EngravedSystem } from '../../../core/engraving/geometry.ts';
import { laidUnder, otherLines } from '../../../client/views/stand/otherLines.ts';

/** A line of measures of 40 staff spaces each, behind a clef of 8. */
function line(first: number, last: number): { first: number; last: number; drawing: EngravedSystem } {
  const measures = Array.from({ length: last - first + 1 }, (_, i) => ({ ordinal: first + i, x0: i === 0 ? 0 : 8 + i * 40, x1: 48 + i * 40 }));
  const geometry = { width: 48 + (last - first) * 40, height: 12, top: 0, bottom: 4, measures, notes: {}, near: [], high: [], low: [] };
  return { first, last, drawing: { inner: '', geometry } };
}

const systems = [line(1, 4), line(5, 8), { first: 9, last: 12, drawing: null }, line(13, 14)];

describe('a passage over several lines', () => {
  it('is found on every other line it stands on, with its measures and where they stand', () => {
    expect(otherLines(systems, 0, 3, 6).map(({ id, from, to, reach }) => [id, from, to, reach])).toEqual([['system-1', 5, 6, { x0: 0, x1: 88 }]]);
    expect(otherLines(systems, 1, 3, 6).map(({ id, from, to, reach }) => [id, from, to, reach])).toEqual([['system-0', 3, 4, { x0: 88, x1: 168 }]]);
  });

  it('has no other line when it stands on this one alone, and a line that is not drawn yet is left out', () => {
    expect(otherLines(systems, 0, 2, 4)).toEqual([]);
    expect(otherLines(systems, 1, 8, 13).map(({ id }) => id)).toEqual(['system-3']);
  });

  it('begins under its beginning on this line, and is smaller where it would run under the sentences or off the page', () => {
    const other = otherLines(systems, 0, 3, 6)[0]!;
    expect(laidUnder({ x0: 88, x1: 168 }, 168, other)).toEqual({ at: 88, scale: 80 / 88 });
    expect(laidUnder({ x0: 0, x1: 44 }, 168, other)).toEqual({ at: 0, scale: 0.5 });
    expect(laidUnder({ x0: 0, x1: 168 }, 168, other)).toEqual({ at: 0, scale: 1 });
  });
});
