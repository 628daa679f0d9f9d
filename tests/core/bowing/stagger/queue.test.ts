import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { modelOf } from '../../../../core/bowing/stagger/model.ts';
import { STAGGER_DEFAULTS } from '../../../../core/bowing/stagger/problem.ts';
import { isQueue, queued } from '../../../../core/bowing/stagger/queue.ts';
import { emptyDraft, ownCost, put } from '../../../../core/bowing/stagger/draft.ts';
import { seatWays } from '../../../../core/bowing/stagger/seating.ts';
import { instantsOf, playersOf } from './small.ts';

const MOST = 5000;
const cases = fc.record({
  count: fc.integer({ min: 1, max: 6 }),
  size: fc.integer({ min: 1, max: 3 }),
  limit: fc.constantFrom(0.9, 1.1, 1.5, 2),
  weights: fc.array(fc.constantFrom(0, 0.5, 1), { minLength: 6, maxLength: 6 }),
  end: fc.constantFrom('down' as const, 'up' as const, null),
});

/** The least points of all sets of changes of all players in which no two changes are less than 0.25 s apart; Infinity where none keeps limit and end. */
function leastOf(model: ReturnType<typeof modelOf>): number {
  const { usable, problem } = model;
  const time = (i: number) => problem.instants[usable[i]!]!.time;
  const sets = Array.from({ length: 2 ** usable.length }, (_, set) => usable.map((_place, i) => i).filter((i) => (set >> i) & 1));
  const ways = sets.filter((set) => {
    const ends = [0, ...set.map(time), problem.duration];
    return ends.slice(1).every((at, k) => at - ends[k]! <= problem.players[0]!.limit + 1e-9) && (problem.end === null || (set.length % 2 === 0 ? 'down' : 'up') === problem.end);
  });
  let least = Infinity;
  const walk = (player: number, taken: readonly number[], points: number): void => {
    if (player === problem.players.length) least = Math.min(least, points);
    else for (const way of ways) if (way.every((i) => taken.every((j) => Math.abs(time(i) - time(j)) > 0.25 - 1e-9)) && way.every((i, k) => k === 0 || time(i) - time(way[k - 1]!) > 0.25 - 1e-9)) walk(player + 1, [...taken, ...way], points + ownCost(model, player, way));
  };
  walk(0, [], 0);
  return least;
}

describe('a queue of players who are alike, one change at a time', () => {
  it('is the cheapest of all sets of changes, or none where there is none, whatever the prices', () => {
    fc.assert(fc.property(cases, fc.array(fc.nat(20), { minLength: 12, maxLength: 12 }), ({ count, size, limit, weights, end }, price) => {
      const instants = instantsOf(count, 0.2).map((instant, i) => ({ ...instant, weight: weights[i]! }));
      const model = modelOf({ instants, duration: Number(((count + 1) * 0.2).toFixed(4)), players: playersOf(size, limit, limit / 1.5), start: 'down', end }, STAGGER_DEFAULTS);
      fc.pre(model.players[0]!.strokes.cost.every((value) => value < 1e7 || value === Infinity) && model.players[0]!.strokes.end.every((value) => value === 0 || value === Infinity));
      const least = leastOf(model);
      const found = queued(model, Float64Array.from(model.crowd.first, (_, w) => price[w] ?? 0), Infinity, MOST)!;
      expect(found.cost).toBe(least);
      if (least === Infinity) return;
      expect(found.ways.reduce((sum, way, p) => sum + ownCost(model, p, way), 0)).toBe(least);
      expect(queued(model, new Float64Array(model.crowd.first.length), least, MOST)!.ways).toEqual([]);
    }), { numRuns: 300 });
  });

  it('is only searched where one at a time may change and nobody differs in more than the seat', () => {
    const model = (size: number, own: object) => modelOf({ instants: instantsOf(19, 0.4), duration: 8, players: playersOf(size, 6, 4).map((player, p) => (p === 1 ? { ...player, ...own } : player)), start: 'down', end: null }, STAGGER_DEFAULTS);
    expect(isQueue(model(8, {}))).toBe(true);
    expect(isQueue(model(8, { limit: 5 }))).toBe(false);
    expect(isQueue(model(8, { shifts: [3] }))).toBe(false);
    expect(isQueue(model(16, {}))).toBe(false);
  });

  it('gives up where there are more orders than it may look at', () => {
    const model = modelOf({ instants: instantsOf(60, 0.4), duration: 24.4, players: playersOf(8, 12, 8), start: 'down', end: null }, STAGGER_DEFAULTS);
    expect(queued(model, new Float64Array(model.crowd.first.length), Infinity, 50)).toBeUndefined();
  });
});

describe('who takes which way', () => {
  it('is settled by exchanges so that partners do not change together where they need not', () => {
    const model = modelOf({ instants: instantsOf(19, 0.4), duration: 8, players: playersOf(4, 6, 4), start: 'down', end: null }, STAGGER_DEFAULTS);
    const draft = emptyDraft(model);
    const ways = [[4], [5], [12], [13]];
    ways.forEach((way, player) => put(model, draft, player, way));
    const before = draft.total;
    seatWays(model, draft, ways);
    expect(draft.total).toBeLessThan(before - 1e6);
    expect([...draft.changes].sort()).toEqual([...ways].sort());
  });
});
