import type { Millimetres } from '../../instruments/instrument.ts';
import type { Travel } from './travel.ts';

/** Places are told apart by this much. */
export const GRID: Millimetres = 5;
/** What a mm too slow or too fast costs, a mm off the usual length costing 1: chosen, not measured. */
const IMPOSSIBLE = 10;

/** Cost in mm of drawing `length` for a bow. Convex. Example: 20 mm more than usual cost 20. */
export function travelCost({ usual, least, most }: Travel, length: Millimetres): number {
  return Math.abs(length - usual) + IMPOSSIBLE * (Math.max(0, least - length) + Math.max(0, length - most));
}

/** Costs to the end from every place, and where the bow goes from there; backwards. */
function solve(run: readonly Travel[], places: number): { start: number; to: Int16Array[] } {
  let beyond = new Float64Array(places);
  const to: Int16Array[] = [];
  for (let i = run.length - 1; i >= 0; i -= 1) {
    const travel = run[i]!;
    const costs = Float64Array.from({ length: places }, (_, length) => travelCost(travel, length * GRID));
    const sign = travel.direction === 'down' ? 1 : -1;
    const values = new Float64Array(places).fill(Infinity);
    const next = new Int16Array(places);
    for (let place = 0; place < places; place += 1) {
      const room = sign === 1 ? places - 1 - place : place;
      for (let length = 0; length <= room; length += 1) {
        const value = costs[length]! + beyond[place + sign * length]!;
        if (value < values[place]!) {
          values[place] = value;
          next[place] = place + sign * length;
        }
      }
    }
    beyond = values;
    to[i] = next;
  }
  let start = 0;
  beyond.forEach((value, place) => { if (value < beyond[start]!) start = place; });
  return { start, to };
}

export interface Drawn {
  from: Millimetres;
  to: Millimetres;
}

/**
 * Where each bow begins and ends between `low` and `high` (mm from the frog), so that bows differ as little as possible from their usual lengths.
 * Exact on places GRID apart by dynamic programming; ties begin nearer the frog. O(bows x places^2). Oracle: HiGHS on the same problem as a linear
 * programme, whose optimum is on the grid when the lengths are. Example: one bow of 300 mm down from 30 ends at 330.
 */
export function distribute(travels: readonly Travel[], low: Millimetres, high: Millimetres): Drawn[] {
  const places = Math.floor((high - low) / GRID + 1e-9) + 1;
  const drawn: Drawn[] = [];
  for (let first = 0; first < travels.length; ) {
    let end = first + 1;
    while (end < travels.length && !travels[end]!.placed) end += 1;
    const { start, to } = solve(travels.slice(first, end), places);
    let place = start;
    for (const next of to) {
      drawn.push({ from: low + place * GRID, to: low + next[place]! * GRID });
      place = next[place]!;
    }
    first = end;
  }
  return drawn;
}
