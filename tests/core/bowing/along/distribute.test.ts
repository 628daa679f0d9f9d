import fc from 'fast-check';
import loader from 'highs';
import type { LegacyHighs } from 'highs';
import { beforeAll, describe, expect, it } from 'vitest';
import { distribute, GRID, travelCost } from '../../../../core/bowing/along/distribute.ts';
import type { Travel } from '../../../../core/bowing/along/travel.ts';

let highs: LegacyHighs;
beforeAll(async () => {
  highs = await (loader as unknown as () => Promise<LegacyHighs>)();
});

const [LOW, HIGH] = [0, 200];

/** The same problem written as a linear programme: places x, lengths as their differences, deviations from above and below. */
function least(travels: readonly Travel[]): number {
  const rows: string[] = [];
  const cost: string[] = [];
  const bounds: string[] = [];
  travels.forEach(({ direction, usual, least: slow, most, placed }, i) => {
    bounds.push(`${LOW} <= a${i} <= ${HIGH}`, `${LOW} <= b${i} <= ${HIGH}`);
    const [plus, minus] = direction === 'down' ? [`b${i}`, `a${i}`] : [`a${i}`, `b${i}`];
    rows.push(`${plus} - ${minus} >= 0`, `over${i} - ${plus} + ${minus} >= ${-usual}`, `under${i} + ${plus} - ${minus} >= ${usual}`, `slow${i} + ${plus} - ${minus} >= ${slow}`, `fast${i} - ${plus} + ${minus} >= ${-most}`);
    if (i > 0 && !placed) rows.push(`a${i} - b${i - 1} = 0`);
    cost.push(`over${i} + under${i} + 10 slow${i} + 10 fast${i}`);
  });
  const text = `Minimize\n obj: ${cost.join(' + ')}\nSubject To\n${rows.map((row, i) => ` c${i}: ${row}`).join('\n')}\nBounds\n${bounds.map((bound) => ` ${bound}`).join('\n')}\nEnd\n`;
  return highs.solve(text, { output_flag: false }).ObjectiveValue;
}

const travel = fc.record({ direction: fc.constantFrom('up' as const, 'down' as const), least: fc.integer({ min: 0, max: 40 }), more: fc.integer({ min: 0, max: 30 }), fast: fc.integer({ min: 0, max: 30 }), placed: fc.boolean() });

describe('how bows are laid along the hair', () => {
  it('costs as little as the optimum of the same problem as a linear programme (HiGHS), with every bow going its way on the hair', () => {
    fc.assert(fc.property(fc.array(travel, { minLength: 1, maxLength: 12 }), (raw) => {
      const travels = raw.map(({ direction, least: slow, more, fast, placed }, stroke): Travel => ({ stroke, direction, seconds: 1, least: slow * GRID, usual: (slow + more) * GRID, most: (slow + more + fast) * GRID, placed: placed || stroke === 0 }));
      const drawn = distribute(travels, LOW, HIGH);
      let cost = 0;
      drawn.forEach(({ from, to }, i) => {
        const length = travels[i]!.direction === 'down' ? to - from : from - to;
        expect(length).toBeGreaterThanOrEqual(0);
        expect(Math.min(from, to)).toBeGreaterThanOrEqual(LOW);
        expect(Math.max(from, to)).toBeLessThanOrEqual(HIGH);
        if (!travels[i]!.placed) expect(from).toBe(drawn[i - 1]!.to);
        cost += travelCost(travels[i]!, length);
      });
      expect(cost).toBeCloseTo(least(travels), 6);
    }), { numRuns: 100 });
  });

  it('costs the same with every bow turned round: frog and tip are alike to it', () => {
    fc.assert(fc.property(fc.array(travel, { minLength: 1, maxLength: 12 }), (raw) => {
      const travels = raw.map(({ direction, least: slow, more, fast, placed }, stroke): Travel => ({ stroke, direction, seconds: 1, least: slow * GRID, usual: (slow + more) * GRID, most: (slow + more + fast) * GRID, placed: placed || stroke === 0 }));
      const turned = travels.map((own): Travel => ({ ...own, direction: own.direction === 'down' ? 'up' : 'down' }));
      const cost = (all: readonly Travel[]): number => distribute(all, LOW, HIGH).reduce((sum, { from, to }, i) => sum + travelCost(all[i]!, Math.abs(to - from)), 0);
      expect(cost(turned)).toBeCloseTo(cost(travels), 6);
    }), { numRuns: 100 });
  });

  it('a bow fits where it is drawn as usual when there is room', () => {
    const [drawn] = distribute([{ stroke: 0, direction: 'down', seconds: 1, least: 50, usual: 100, most: 200, placed: true }], 30, 300);
    expect(drawn).toEqual({ from: 30, to: 130 });
  });
});
