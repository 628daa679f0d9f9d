import { expect, it } from 'vitest';
import { spectaclesAt } from '../../../client/drawing/spectaclesAt.ts';

const begins = (path: string) => [...path.matchAll(/M(-?[\d.]+) (-?[\d.]+)/g)].map(([, x, y]) => [Number(x), Number(y)]);

it('every pair has two lenses beside its place, dark where the finding is about that seat', () => {
  // Lenses stand 0.82 off the middle and are 0.6 wide to each side, five times as large here.
  const left = 100 - 5 * 0.82 - 5 * 0.6;
  const right = 100 + 5 * 0.82 - 5 * 0.6;
  const one = (dark: 'both' | 'inside' | 'outside') => spectaclesAt([{ x: 100, dark }], 28, 5);
  const at = (path: string) => begins(path).map(([x]) => x!);
  expect(at(one('both').dark)).toEqual([expect.closeTo(left, 1), expect.closeTo(right, 1)]);
  expect(one('both').open).toBe('');
  expect(at(one('inside').dark)).toEqual([expect.closeTo(left, 1)]);
  expect(at(one('inside').open)).toEqual([expect.closeTo(right, 1)]);
  expect(at(one('outside').dark)).toEqual([expect.closeTo(right, 1)]);
});

it('a bridge and two side pieces join each pair, all pairs at one height', () => {
  const { bridges } = spectaclesAt([{ x: 10, dark: 'both' }, { x: 50, dark: 'both' }], 28, 5);
  expect(begins(bridges)).toEqual([[10, 28], [50, 28]]);
  expect(bridges.match(/m/g)).toHaveLength(2 * 3);
});
