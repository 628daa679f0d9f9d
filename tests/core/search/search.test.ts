import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { cheapestPath } from '../../../core/search/cheapestPath.ts';
import { costsToEnd } from '../../../core/search/costsToEnd.ts';
import { detours } from '../../../core/search/detours.ts';
import { differentPaths } from '../../../core/search/differentPaths.ts';
import type { Lattice } from '../../../core/search/lattice.ts';
import { chance } from '../../support/chance.ts';
import { everyPath } from './everyPath.ts';

const cost = fc.oneof({ weight: 9, arbitrary: fc.double({ min: 0, max: 5, noNaN: true }) }, { weight: 1, arbitrary: fc.constant(Infinity) });
const lattices: fc.Arbitrary<Lattice> = fc.array(fc.integer({ min: 1, max: 4 }), { minLength: 1, maxLength: 6 }).chain((sizes) =>
  fc.record({
    states: fc.tuple(...sizes.map((size) => fc.array(cost, { minLength: size, maxLength: size }).map((values) => Float64Array.from(values)))),
    steps: fc.tuple(...sizes.map((size, i) => { const n = i === 0 ? 0 : size * sizes[i - 1]!; return fc.array(cost, { minLength: n, maxLength: n }).map((values) => Float64Array.from(values)); })),
  }),
);

/** The same with no two paths alike in cost. */
const untied = lattices.map(({ states, steps }): Lattice => {
  const random = chance(3).next;
  const moved = (rows: Float64Array[]): Float64Array[] => rows.map((row) => row.map((value) => value + random()));
  return { states: moved(states), steps: moved(steps) };
});

describe('the search over layers', () => {
  it('finds a path as cheap as any, on every lattice of up to six layers', () => {
    fc.assert(fc.property(lattices, (lattice) => {
      const all = everyPath(lattice);
      const found = cheapestPath(lattice);
      if (all.length === 0) expect(found).toBeNull();
      else expect(found!.cost).toBeCloseTo(all[0]!.cost, 9);
    }), { numRuns: 300 });
  });

  it('lists the cheapest of each sequence of classes, in order, none left out and none twice', () => {
    fc.assert(fc.property(lattices, fc.integer({ min: 1, max: 8 }), (lattice, count) => {
      const classOf = (layer: number, state: number): number => (state + layer) % 2;
      const classes = (states: number[]): string => states.map((state, i) => classOf(i, state)).join('');
      const cheapest = new Map<string, number>();
      for (const { states, cost: value } of everyPath(lattice)) if (!cheapest.has(classes(states))) cheapest.set(classes(states), value);
      const found = differentPaths(lattice, classOf, count);
      expect(found.map(({ states }) => classes(states))).toHaveLength(new Set(found.map(({ states }) => classes(states))).size);
      const expected = [...cheapest.values()].slice(0, count);
      expect(found).toHaveLength(expected.length);
      found.forEach((path, i) => expect(path.cost).toBeCloseTo(expected[i]!, 9));
    }), { numRuns: 300 });
  });

  it('lists beside the cheapest path the cheapest through every state of another class, those alike left out', () => {
    fc.assert(fc.property(untied, fc.integer({ min: 1, max: 5 }), fc.integer({ min: 1, max: 3 }), (lattice, count, apart) => {
      const classOf = (layer: number, state: number): number => (state + layer) % 3;
      const all = everyPath(lattice);
      fc.pre(all.length > 0);
      const differing = (a: number[], b: number[]): number => a.filter((state, i) => classOf(i, state) !== classOf(i, b[i]!)).length;
      const kept = [all[0]!];
      const through = lattice.states.flatMap((states, i) => [...states.keys()].flatMap((state) => all.find((path) => path.states[i] === state && classOf(i, state) !== classOf(i, all[0]!.states[i]!)) ?? []));
      for (const path of through.sort((a, b) => a.cost - b.cost)) if (kept.length <= count && kept.every((other) => differing(path.states, other.states) >= apart)) kept.push(path);
      const found = detours(lattice, all[0]!, classOf, count, apart);
      expect(found.map(({ states }) => states)).toEqual(kept.slice(1).map(({ states }) => states));
      found.forEach(({ cost: value }, i) => expect(value).toBeCloseTo(kept[i + 1]!.cost, 9));
    }), { numRuns: 300 });
  });

  it('solves a change again as if from the start', () => {
    fc.assert(fc.property(lattices, fc.nat(), fc.nat(), (lattice, layer, state) => {
      const at = layer % lattice.states.length;
      const changed = { ...lattice, states: lattice.states.map((values, i) => (i === at ? values.map((value, s) => (s === state % values.length ? value + 3 : value)) : values)) };
      const again = cheapestPath(changed, costsToEnd(changed, { from: at, to: at, before: costsToEnd(lattice) }));
      const anew = cheapestPath(changed);
      expect(again === null).toBe(anew === null);
      if (anew) expect(again!.cost).toBeCloseTo(anew.cost, 9);
    }), { numRuns: 300 });
  });
});
