import { describe, expect, it } from 'vitest';
import { leftOf, marginsOf, MarginsName } from '../../../core/print/margins.ts';
import { paperNamed, PaperName } from '../../../core/print/paper.ts';

describe('margins', () => {
  it.each(PaperName.options)('on %s leave most of the sheet to the music, and nothing nearer the edge than printers reach', (name) => {
    const { width, height } = paperNamed(name);
    for (const margins of MarginsName.options) {
      const { inner, outer, top, bottom } = marginsOf(name, margins);
      expect(Math.min(inner, outer, top, bottom)).toBeGreaterThanOrEqual(10);
      expect(width - inner - outer).toBeGreaterThan(0.8 * width);
      expect(height - top - bottom).toBeGreaterThan(0.85 * height);
    }
  });

  // MOLA, Guidelines for Music Preparation (2006): 9.5 x 12.5 inches with an image of 8 x 11.
  it('to write in are three quarters of an inch', () => {
    for (const side of Object.values(marginsOf('a4', 'wide'))) expect(side).toBeCloseTo(((9.5 - 8) / 2) * 25.4, 0);
  });

  it('at the fold are left on odd pages, right on even ones', () => {
    const bound = marginsOf('a4', 'bound');
    expect(bound.inner).toBeGreaterThan(bound.outer);
    expect([leftOf(1, bound), leftOf(2, bound)]).toEqual([bound.inner, bound.outer]);
  });
});
