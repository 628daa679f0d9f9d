import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { dragged, type Drag } from '../../../client/tools/caret/passageDrag.ts';

const start: Drag = { from: 'a', x: 100, y: 100, begun: false };
const far = fc.integer({ min: 11, max: 400 });
const sign = fc.constantFrom(-1, 1);

describe('a finger on the staff', () => {
  it('takes a passage in hand when it goes along the staff, either way', () => {
    fc.assert(fc.property(far, sign, fc.double({ min: -0.9, max: 0.9, noNaN: true }), (along, way, slant) => {
      expect(dragged(start, 100 + way * along, 100 + slant * along).begun).toBe(true);
    }));
  });

  it('scrolls the page when it goes up or down, and is a touch when it stays', () => {
    fc.assert(fc.property(far, sign, fc.double({ min: -0.9, max: 0.9, noNaN: true }), (across, way, slant) => {
      expect(dragged(start, 100 + slant * across, 100 + way * across).begun).toBe(false);
    }));
    fc.assert(fc.property(fc.integer({ min: -10, max: 10 }), fc.integer({ min: -10, max: 10 }), (x, y) => {
      expect(dragged(start, 100 + x, 100 + y).begun).toBe(false);
    }));
  });

  it('keeps a passage that has begun, wherever it goes', () => {
    fc.assert(fc.property(fc.integer(), fc.integer(), (x, y) => {
      expect(dragged({ ...start, begun: true }, x, y).begun).toBe(true);
    }));
  });
});
