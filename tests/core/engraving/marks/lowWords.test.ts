import { describe, expect, it } from 'vitest';
import { type Geometry, UNITS } from '../../../../core/engraving/geometry.ts';
import { lowerWords } from '../../../../core/engraving/marks/lowWords.ts';
import type { PlacedMarks } from '../../../../core/engraving/marks/placeMarks.ts';

const geometry: Geometry = { width: 60, height: 24, top: 10, bottom: 14, measures: [], notes: {}, near: [], high: [], low: [] };
const dynamic = (x: number) => `<g class="dynam low"><use href="#gE520" transform="translate(${x * UNITS}, ${17 * UNITS}) scale(0.72, 0.72)"/></g>`;
/** One figure below the staff, whose foot is at y = 17. */
const figureAt = (x: number): PlacedMarks => ({ signs: [{ note: 'n', name: 'finger:1', state: 'adopted', stroke: '1', x, y: 17, scale: 1, x0: x - 0.7, x1: x + 0.7, height: 1.75 }], spectacles: [], top: 10, bottom: 17 });
const drops = (xs: readonly number[], figure: number) => lowerWords(xs.map(dynamic).join(''), geometry, figureAt(figure)).map(({ drop }) => drop);

describe('printed words below the staff', () => {
  it('go down under a figure, those far from it not', () => {
    const [under, far] = drops([10, 40], 10.5);
    expect(under).toBeGreaterThan(0);
    expect(far).toBe(0);
  });

  it('stay in line with what is close beside them', () => {
    const [under, beside, far] = drops([10, 13, 40], 10.5);
    expect(beside).toBe(under);
    expect(far).toBe(0);
  });

  it('are told in the order of the drawing', () => {
    const [far, under] = drops([40, 10], 10.5);
    expect([far, under! > 0]).toEqual([0, true]);
  });
});
