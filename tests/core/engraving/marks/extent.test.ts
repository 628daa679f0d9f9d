import { describe, expect, it } from 'vitest';
import { placeMarks, type ShownFinding, type ShownMark } from '../../../../core/engraving/marks/placeMarks.ts';
import type { Geometry } from '../../../../core/engraving/geometry.ts';
import { extentOf } from '../../../../core/engraving/marks/extent.ts';

/** One staff with its lines from y = 10 to 14, a note at x = 10 and a tempo over it from 6 to 8. */
const geometry: Geometry = {
  width: 40, height: 24, top: 10, bottom: 14,
  measures: [{ ordinal: 1, x0: 0, x1: 40 }],
  notes: { one: { x: 10, y: 13, measure: 1 }, far: { x: 35, y: 13, measure: 1 } },
  near: [], high: [{ x0: 2, x1: 20, y0: 6, y1: 8 }], low: [],
};
const two: ShownMark = { note: 'one', value: { kind: 'finger', finger: 2 }, seats: 'all', state: 'adopted' };
const watch = (note: string): ShownFinding => ({ note, rule: 'bow/same-direction', lens: 'both' });

/** How far the tempo's foot stays above the outermost sign over the note; negative where they meet. */
function clearance(marks: ShownMark[], findings: ShownFinding[]): number {
  const placed = placeMarks(geometry, marks, findings);
  const tops = [...placed.signs.map(({ y }) => y - 1.75), ...placed.spectacles.map(({ y }) => y - 0.6)];
  return Math.min(...tops) - (geometry.high[0]!.y1 - extentOf(geometry, placed, false).lift);
}

describe('printed words over the staff', () => {
  it('stay where they are when nothing of the section\'s stands under them', () => {
    expect(extentOf(geometry, placeMarks(geometry, []), false).lift).toBe(0);
    expect(extentOf(geometry, placeMarks(geometry, [], [watch('far')]), false).lift).toBe(0);
  });

  it('give way to a figure', () => {
    expect(clearance([two], [])).toBeGreaterThanOrEqual(0);
  });

  it('give way to spectacles too, alone or over a figure', () => {
    expect(clearance([], [watch('one')])).toBeGreaterThanOrEqual(0);
    expect(clearance([two], [watch('one')])).toBeGreaterThanOrEqual(0);
  });

  it('take the room they moved into with them', () => {
    const plain = extentOf(geometry, placeMarks(geometry, []), false);
    const moved = extentOf(geometry, placeMarks(geometry, [two], [watch('one')]), false);
    expect(moved.up - plain.up).toBeGreaterThan(0);
  });
});
