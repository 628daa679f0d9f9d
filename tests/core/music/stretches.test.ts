import { describe, expect, it } from 'vitest';
import { stretchesOf } from '../../../core/music/stretches.ts';

describe('whole numbers as stretches of neighbours', () => {
  it.each([
    ['none', [], []],
    ['one named twice is one', [3, 3], [{ from: 3, to: 3 }]],
    ['neighbours join in whatever order they come', [4, 1, 2], [{ from: 1, to: 2 }, { from: 4, to: 4 }]],
    ['ten comes after nine', [10, 9, 2], [{ from: 2, to: 2 }, { from: 9, to: 10 }]],
  ])('%s', (_, numbers, stretches) => expect(stretchesOf(numbers)).toEqual(stretches));
});
