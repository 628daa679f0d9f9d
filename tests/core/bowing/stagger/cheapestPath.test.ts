import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { cheapestPath } from '../../../../core/bowing/stagger/cheapestPath.ts';
import { strokeLengthCost } from '../../../../core/bowing/stagger/costs/strokeLength.ts';
import { strokesFor } from '../../../../core/bowing/stagger/strokes.ts';
import { closerThan, sumsOf, windowsOf } from '../../../../core/bowing/stagger/windows.ts';
import { playersOf } from './small.ts';

const [player] = playersOf(1, 3.5, 2);

describe('the cheapest way of one player', () => {
  it('costs no more than any of all subsets of instants, windows and direction counted apart', () => {
    const gaps = fc.array(fc.integer({ min: 1, max: 8 }), { minLength: 1, maxLength: 9 });
    fc.assert(fc.property(gaps, fc.array(fc.nat(30), { minLength: 9, maxLength: 9 }), fc.array(fc.nat(20), { minLength: 9, maxLength: 9 }), fc.constantFrom('down' as const, 'up' as const, null), (steps, at, enter, end) => {
      const times = steps.map((_, i) => steps.slice(0, i + 1).reduce((a, b) => a + b, 0) / 4);
      const duration = times[times.length - 1]! + 0.5;
      const strokes = strokesFor(times, { duration, start: 'down', end }, player!);
      const windows = windowsOf(closerThan(times, 0.5), times.length);
      const price = enter.slice(0, windows.first.length);
      let least = Infinity;
      for (let set = 0; set < 2 ** times.length; set++) {
        const chosen = times.map((_, i) => i).filter((i) => (set >> i) & 1);
        if (end !== null && (chosen.length % 2 === 0 ? 'down' : 'up') !== end) continue;
        const ends = [0, ...chosen.map((i) => times[i]!), duration];
        const lengths = ends.slice(1).map((time, k) => time - ends[k]!);
        if (lengths.some((length) => length > 3.5 + 1e-9)) continue;
        const entered = price.filter((_, w) => chosen.some((i) => i >= windows.first[w]! && i <= windows.last[w]!));
        least = Math.min(least, [...lengths.map((length) => strokeLengthCost(length, 2)), ...chosen.map((i) => at[i]!), ...entered].reduce((a, b) => a + b, 0));
      }
      const found = cheapestPath(strokes, Float64Array.from(times, (_, i) => at[i]!), [{ windows, sums: sumsOf(price) }]);
      if (least < Infinity) expect(found.cost).toBe(least);
      else expect(found.cost).toBeGreaterThan(1e7);
    }), { numRuns: 300 });
  });
});

describe('windows', () => {
  it('two instants share a window exactly when they are closer than asked', () => {
    fc.assert(fc.property(fc.array(fc.integer({ min: 1, max: 6 }), { minLength: 1, maxLength: 30 }), (steps) => {
      const times = steps.map((_, i) => steps.slice(0, i + 1).reduce((a, b) => a + b, 0) / 10);
      const { from, to } = windowsOf(closerThan(times, 0.5), times.length);
      times.forEach((early, i) => times.forEach((late, j) => {
        if (j >= i) expect(to[i]! >= from[j]!).toBe(late - early < 0.5 - 1e-9);
      }));
    }));
  });
});
