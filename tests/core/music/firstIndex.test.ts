import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { firstIndex } from '../../../core/music/firstIndex.ts';

describe('the first index from which on something holds', () => {
  it('is the one found by trying each in turn, or the length', () => {
    fc.assert(fc.property(fc.array(fc.integer({ min: 0, max: 20 })), fc.integer({ min: -1, max: 21 }), (values, least) => {
      const sorted = values.sort((a, b) => a - b);
      const tried = sorted.findIndex((value) => value >= least);
      expect(firstIndex(sorted.length, (i) => sorted[i]! >= least)).toBe(tried === -1 ? sorted.length : tried);
    }));
  });
});
