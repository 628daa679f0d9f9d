import { describe, expect, it } from 'vitest';
import { emptyCost, lineCost, PAGE, TITLE_PAGE, turnCost } from '../../../core/print/costs.ts';
import { type Block, heightOf, type LaidOnPages, layOnPages, type Line, type Sheet } from '../../../core/print/pages.ts';
import { chance } from '../../support/chance.ts';

const SHEET: Sheet = { line: 100, firstHeight: 40, height: 50, gap: 1, apart: 6 };

function blocks(seed: number, count: number): Block[] {
  const { next, below } = chance(seed);
  return Array.from({ length: count }, (_, i) => ({
    first: i + 1, last: i + 1, width: 20 + 40 * next(), lead: i ? 5 : 0, up: below(9) / 2 + 1.5, down: below(9) / 2 + 1.5, staff: 4,
    rest: { before: below(3), after: below(2) },
  }));
}

/** Every way of ending lines and pages, one by one; the oracle. */
function cheapestOfAll(music: readonly Block[], sheet: Sheet): number {
  let best = Infinity;
  const n = music.length;
  for (let way = 0; way < 3 ** (n - 1); way += 1) {
    const pages: Line[][] = [[]];
    let from = 0;
    let rest = way;
    for (let to = 1; to <= n; to += 1) {
      const ends = to === n ? 2 : rest % 3;
      rest = Math.floor(rest / 3);
      if (ends === 0) continue;
      pages.at(-1)!.push({ from, to });
      from = to;
      if (ends === 2 && to < n) pages.push([]);
    }
    best = Math.min(best, costOf(music, pages, sheet, 1), costOf(music, pages, sheet, 2));
  }
  return best;
}

function costOf(music: readonly Block[], pages: readonly (readonly Line[])[], sheet: Sheet, begins: 1 | 2): number {
  let cost = begins === 2 ? TITLE_PAGE : 0;
  pages.forEach((lines, i) => {
    for (const { from, to } of lines) {
      const width = music[from]!.lead + music.slice(from, to).reduce((sum, block) => sum + block.width, 0);
      const next = music[to];
      cost += lineCost(width, sheet.line, { longer: next ? width + next.width : Infinity, ends: !next, single: to - from === 1 });
    }
    const height = i === 0 ? sheet.firstHeight : sheet.height;
    const used = heightOf(music, lines, sheet);
    if (used > height && lines.length > 1) cost = Infinity;
    const last = i === pages.length - 1;
    cost += emptyCost(used, height, last);
    if (!last) cost += PAGE + ((begins + i) % 2 ? turnCost(music[lines.at(-1)!.to - 1]!.rest) : 0);
  });
  return cost;
}

describe('music laid on pages', () => {
  it('costs as little as the cheapest of all ways of ending lines and pages', () => {
    for (let seed = 1; seed <= 60; seed += 1) {
      const music = blocks(seed, 4 + (seed % 6));
      const laid = layOnPages(music, SHEET);
      expect(laid.cost, `seed ${seed}`).toBeCloseTo(cheapestOfAll(music, SHEET), 9);
      expect(costOf(music, laid.pages, SHEET, laid.begins), `seed ${seed}`).toBeCloseTo(laid.cost, 9);
    }
  });

  it('stands on exactly one line each, in order', () => {
    for (let seed = 1; seed <= 20; seed += 1) {
      const { pages } = layOnPages(blocks(seed, 80), SHEET);
      const lines = pages.flat();
      expect(lines[0]!.from).toBe(0);
      expect(lines.at(-1)!.to).toBe(80);
      for (let i = 1; i < lines.length; i += 1) expect(lines[i]!.from).toBe(lines[i - 1]!.to);
    }
  });

  it('leaves a page part empty so that it is turned in a rest', () => {
    const even = blocks(3, 40).map((block, i) => ({ ...block, width: 23, up: 2, down: 2, rest: i === 7 ? { before: 4, after: 0 } : { before: 0, after: 0 } }));
    const { pages } = layOnPages(even, { ...SHEET, firstHeight: 46 });
    expect(pages[0]!.at(-1)!.to).toBe(8);
    expect(pages.length).toBeGreaterThan(1);
    const without = layOnPages(even.map((block) => ({ ...block, rest: { before: 0, after: 0 } })), { ...SHEET, firstHeight: 46 });
    expect(without.pages[0]!.at(-1)!.to).toBeGreaterThan(8);
  });

  it('music of two pages without a rest lies open behind a page with the title; with one it begins on the first', () => {
    const restless = blocks(3, 16).map((block) => ({ ...block, width: 23, up: 2, down: 2, rest: { before: 0, after: 0 } }));
    const room = { ...SHEET, firstHeight: 20, height: 20 };
    const told = ({ begins, pages }: LaidOnPages) => [begins, pages.length];
    expect(told(layOnPages(restless, room))).toEqual([2, 2]);
    expect(told(layOnPages(restless.map((block) => ({ ...block, rest: { before: 2, after: 2 } })), room))).toEqual([1, 2]);
  });

  it('a measure wider than the page has a line of its own', () => {
    const { pages } = layOnPages([{ ...blocks(1, 1)[0]!, width: 300 }, ...blocks(2, 3)], SHEET);
    expect(pages[0]![0]).toEqual({ from: 0, to: 1 });
  });

  it('nothing lies on no page', () => expect(layOnPages([], SHEET)).toEqual({ pages: [], cost: 0, begins: 1 }));
});
