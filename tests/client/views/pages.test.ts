import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { pageTurns } from '../../../client/views/stand/view/pageTurns.ts';
import { bySystem } from '../../../client/views/stand/bySystem.ts';
import { sameProps } from '../../../client/views/stand/sameProps.ts';

describe('pages as they will print', () => {
  it('no page is fuller than a sheet, and none ends while the next line would fit', () => {
    fc.assert(
      fc.property(fc.array(fc.integer({ min: 5, max: 40 }), { minLength: 1, maxLength: 60 }), (heights) => {
        const sheet = { page: 100, heading: 10 };
        const begins = [0, ...pageTurns(heights, sheet), heights.length];
        for (const [i, begin] of begins.slice(0, -1).entries()) {
          const end = begins[i + 1]!;
          const filled = (i === 0 ? sheet.heading : 0) + heights.slice(begin, end).reduce((a, b) => a + b, 0);
          expect(filled).toBeLessThanOrEqual(sheet.page);
          if (end < heights.length) expect(filled + heights[end]!).toBeGreaterThan(sheet.page);
        }
      }),
    );
  });

  it('things are sorted into the lines their measures stand in; one that crosses a line break stands in both', () => {
    const ranges = [{ first: 1, last: 4 }, { first: 5, last: 8 }, { first: 9, last: 9 }];
    const found = bySystem(ranges, [[2, 2], [4, 5], [9, 9], [40, 40]] as const, (thing) => thing);
    expect(found).toEqual([[[2, 2], [4, 5]], [[4, 5]], [[9, 9]]]);
  });
});

describe('what need not be drawn again', () => {
  const mark = { note: 'a', value: { kind: 'retake' } };
  it('is what holds the same things, whoever made the lists anew', () => {
    expect(sameProps({ marks: [mark], number: '1' }, { marks: [{ ...mark }], number: '1' })).toBe(true);
    expect(sameProps({ marks: [mark] }, { marks: [] })).toBe(false);
    expect(sameProps({ marks: [mark] }, { marks: [{ ...mark, note: 'b' }] })).toBe(false);
    expect(sameProps({ marks: [mark] }, { marks: [{ ...mark, share: 0.5 }] })).toBe(false);
    expect(sameProps({ number: '1' }, { number: '2' })).toBe(false);
  });
});
