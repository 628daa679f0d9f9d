import { describe, expect, it } from 'vitest';
import fc from 'fast-check';
import { closerThan, sumOverWindows, sumsOf, windowsOf } from '../../../../core/bowing/stagger/windows.ts';

describe('windows of instants', () => {
  it('sum at every instant what stands on the windows that hold it, as counting one by one does', () => {
    const gaps = fc.array(fc.integer({ min: 1, max: 9 }), { minLength: 1, maxLength: 12 });
    fc.assert(fc.property(gaps, fc.array(fc.nat(50), { minLength: 12, maxLength: 12 }), (steps, prices) => {
      const times = steps.map((_, i) => steps.slice(0, i + 1).reduce((a, b) => a + b, 0) / 10);
      const windows = windowsOf(closerThan(times, 0.5), times.length);
      const price = prices.slice(0, windows.first.length);
      const counted = times.map((_, i) => price.reduce((sum, p, w) => sum + (windows.first[w]! <= i && i <= windows.last[w]! ? p : 0), 0));
      expect([...sumOverWindows(windows, price)]).toEqual(counted);
    }));
  });

  it('sum to nothing where an instant lies in none', () => {
    const windows = windowsOf([[0, 1], [3, 4]], 5);
    expect([...sumOverWindows(windows, [2, 7])]).toEqual([2, 2, 0, 7, 7]);
    expect([...sumsOf([2, 3])]).toEqual([0, 2, 5]);
  });
});
