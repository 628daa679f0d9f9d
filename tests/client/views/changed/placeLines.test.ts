import { describe, expect, it } from 'vitest';
import { linesOfPlace, placeLines } from '../../../../client/views/changed/placeLines.ts';

describe('the lines of changed places', () => {
  it('hold each measure once, rising, at most so many in a line', () => {
    expect(placeLines([{ from: 9, to: 13 }, null, { from: 2, to: 2 }, { from: 2, to: 3 }], 3)).toEqual([{ first: 2, last: 2 }, { first: 3, last: 3 }, { first: 9, last: 11 }, { first: 12, last: 13 }]);
  });

  it('show a place by every line that has a measure of it', () => {
    const lines = placeLines([{ from: 2, to: 6 }, { from: 9, to: 9 }], 2);
    expect(linesOfPlace(lines, { from: 3, to: 4 })).toEqual([0, 1]);
    expect(linesOfPlace(lines, { from: 9, to: 9 })).toEqual([3]);
    expect(linesOfPlace(lines, null)).toEqual([]);
  });
});
