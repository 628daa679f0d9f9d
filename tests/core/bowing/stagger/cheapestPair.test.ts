import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { cheapestPair } from '../../../../core/bowing/stagger/cheapestPair.ts';
import { strokeLengthCost } from '../../../../core/bowing/stagger/costs/strokeLength.ts';
import { strokesFor } from '../../../../core/bowing/stagger/strokes.ts';
import { closerThan, windowsOf } from '../../../../core/bowing/stagger/windows.ts';
import { playersOf } from './small.ts';

describe('the cheapest way of two at a desk', () => {
  it('costs no more than any of all pairs of subsets that keep limits, end and distance counted apart', () => {
    const gaps = fc.array(fc.integer({ min: 1, max: 6 }), { minLength: 1, maxLength: 6 });
    const points = fc.array(fc.nat(30), { minLength: 6, maxLength: 6 });
    fc.assert(fc.property(gaps, points, points, fc.constantFrom('down' as const, 'up' as const, null), fc.integer({ min: 4, max: 14 }), fc.integer({ min: 4, max: 14 }), (steps, atA, atB, end, limitA, limitB) => {
      const times = steps.map((_, i) => steps.slice(0, i + 1).reduce((a, b) => a + b, 0) / 4);
      const duration = times[times.length - 1]! + 0.5;
      const [outside, inside] = playersOf(2, 1, 2).map((player, p) => ({ ...player, limit: (p === 0 ? limitA : limitB) / 4 }));
      const problem = { duration, start: 'down' as const, end };
      const strokes = [strokesFor(times, problem, outside!), strokesFor(times, problem, inside!)] as const;
      fc.pre(strokes.every(({ cost }) => cost.every((value) => value < 1e7 || value === Infinity)) && strokes.every(({ end: [even, odd] }) => Math.min(even, odd) === 0 && Math.max(even, odd) !== 1e11));
      const ways = (limit: number, at: readonly number[]) => {
        const found: { chosen: number[]; cost: number }[] = [];
        for (let set = 0; set < 2 ** times.length; set++) {
          const chosen = times.map((_, i) => i).filter((i) => (set >> i) & 1);
          if (end !== null && (chosen.length % 2 === 0 ? 'down' : 'up') !== end) continue;
          const ends = [0, ...chosen.map((i) => times[i]!), duration];
          const lengths = ends.slice(1).map((time, k) => time - ends[k]!);
          if (lengths.some((length) => length > limit + 1e-9)) continue;
          found.push({ chosen, cost: [...lengths.map((length) => strokeLengthCost(length, 2)), ...chosen.map((i) => at[i]!)].reduce((a, b) => a + b, 0) });
        }
        return found;
      };
      let least = Infinity;
      for (const one of ways(outside!.limit, atA)) for (const other of ways(inside!.limit, atB)) if (one.chosen.every((i) => other.chosen.every((j) => Math.abs(times[i]! - times[j]!) > 0.5 - 1e-9))) least = Math.min(least, one.cost + other.cost);
      const desk = windowsOf(closerThan(times, 0.5), times.length);
      const found = cheapestPair([{ strokes: strokes[0], at: atA }, { strokes: strokes[1], at: atB }], desk);
      expect(found.cost).toBe(least);
      if (least === Infinity) return;
      for (const below of [least + 1, least + 20]) expect(cheapestPair([{ strokes: strokes[0], at: atA }, { strokes: strokes[1], at: atB }], desk, below).cost).toBe(least);
      expect(cheapestPair([{ strokes: strokes[0], at: atA }, { strokes: strokes[1], at: atB }], desk, least).cost).toBe(Infinity);
      const [one, other] = found.changes;
      expect(ways(outside!.limit, atA).find(({ chosen }) => chosen.join() === one.join())!.cost + ways(inside!.limit, atB).find(({ chosen }) => chosen.join() === other.join())!.cost).toBe(least);
      for (const i of one) for (const j of other) expect(Math.abs(times[i]! - times[j]!)).toBeGreaterThan(0.5 - 1e-9);
    }), { numRuns: 400 });
  });
});
