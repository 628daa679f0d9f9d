import { chanceFrom } from './chance.ts';
import { cheapestPath, sumsOf } from './cheapestPath.ts';
import { ownCost } from './draft.ts';
import type { Model } from './model.ts';
import type { Worth } from './worth.ts';
import type { Column, Programme } from './simplex.ts';
import { optimise, programmeOf } from './simplex.ts';

/** Prices of a change at one instant in crowd windows and stretches. */
export interface SharedPrices {
  crowd: Float64Array;
  stretch: Float64Array;
}

/** A way some players of one kind take, and how many of them (fractions allowed). */
export interface Taken {
  kind: number;
  changes: readonly number[];
  amount: number;
}

export interface Relaxed {
  bound: number;
  prices: SharedPrices;
  taken: readonly Taken[];
}

/** Who is still to be placed, and the room they find. */
export interface Room {
  /** Players of each kind. */
  sizes: readonly number[];
  /** Changes each crowd window and stretch still takes; a stretch may be over. */
  crowd: ArrayLike<number>;
  stretch: ArrayLike<number>;
}

/** Ways found so far, for every later programme over the same model. */
export interface Pool {
  kinds: readonly number[];
  /** A player of each kind. */
  first: readonly number[];
  ways: { kind: number; changes: readonly number[]; column: Column }[];
  seen: Set<string>;
}

/** A pool without ways. Players who differ in nothing but their seat are one kind. */
export function poolOf(model: Model): Pool {
  const kinds = kindsOf(model);
  return { kinds, first: [...new Set(kinds)].map((kind) => kinds.indexOf(kind)), ways: [], seen: new Set() };
}

/** Everybody, and all the room there is. */
export function roomOf(model: Model, { kinds, first }: Pool): Room {
  return {
    sizes: first.map((_, kind) => kinds.filter((other) => other === kind).length),
    crowd: new Float64Array(model.crowd.first.length).fill(model.allowed),
    stretch: new Float64Array(model.stretches).fill(model.share),
  };
}

/** Adds a way to the pool; false where it is there already. */
export function addWay(model: Model, pool: Pool, kind: number, changes: readonly number[]): boolean {
  const key = `${kind}:${changes.join(' ')}`;
  if (pool.seen.has(key)) return false;
  pool.seen.add(key);
  pool.ways.push({ kind, changes, column: columnOf(model, pool.first.length, kind, changes, ownCost(model, pool.first[kind]!, changes)) });
  return true;
}

function kindsOf(model: Model): number[] {
  const seen = new Map<string, number>();
  return model.players.map(({ change }, p) => {
    const { limit, comfortable } = model.problem.players[p]!;
    const key = `${limit} ${comfortable} ${change.join(' ')}`;
    const kind = seen.get(key) ?? seen.size;
    seen.set(key, kind);
    return kind;
  });
}

/** Points of leaving a right side unmet at the start: above any way's cost, low enough to stay exact in floating point. */
const UNMET = 1e5;
/** Share of the best prices kept when new ways are looked for, against swinging; chosen, not measured. */
const KEPT = 0.5;
/** Ways looked for at once for players of one kind, and the points by which each next one is kept off the last; chosen, not measured. */
const COPIES = 6;
const ASIDE = 4;

function startOf(room: Room, worth: Worth): Programme {
  const kinds = room.sizes.length;
  const windows = room.crowd.length;
  // Right sides a little apart keep the simplex from turning in circles; the bound is proved with the true ones.
  const chance = chanceFrom(kinds + windows);
  const right = [...room.sizes, ...[...Array.from(room.crowd), ...Array.from(room.stretch)].map((left) => Math.max(0, left) + 1e-3 * chance())];
  const basis = right.map((_, r): Column => ({ cost: r < kinds ? UNMET : 0, rows: [r], values: [1] }));
  const over = right.slice(kinds).map((_, r): Column => ({ cost: r < windows ? Math.min(worth.crowd, UNMET) : worth.stretch, rows: [kinds + r], values: [-1] }));
  return programmeOf([...basis, ...over], right);
}

function columnOf(model: Model, kinds: number, kind: number, changes: readonly number[], cost: number): Column {
  const { crowd, stretch } = model;
  const counts = new Map<number, number>([[kind, 1]]);
  const add = (row: number) => counts.set(row, (counts.get(row) ?? 0) + 1);
  for (const instant of changes) {
    for (let w = crowd.from[instant]!; w <= crowd.to[instant]!; w++) add(kinds + w);
    add(kinds + crowd.first.length + stretch[instant]!);
  }
  return { cost, rows: [...counts.keys()], values: [...counts.values()] };
}

/** Points of a change at each usable instant at these prices. */
export function priceAt(model: Model, { crowd, stretch }: SharedPrices): Float64Array {
  const sums = sumsOf(crowd);
  return Float64Array.from(model.usable, (_, i) => sums[model.crowd.to[i]! + 1]! - sums[model.crowd.from[i]!]! + stretch[model.stretch[i]!]!);
}

/**
 * A proved lower bound by column generation: crowd windows and evenness as rows of a linear programme over ways through the passage,
 * new ways from `cheapestPath` at its prices. The bound is the Lagrangian value at those prices, computed apart from the programme,
 * so it is valid whatever the simplex did. Desk partners and neighbours are left to each other here: their rules can only raise the cost.
 * @param pivots at most about so many simplex steps in all
 * @returns the best bound in points, its prices, and the programme's fractional plan
 */
export function relaxedPlan(model: Model, worth: Worth, room: Room, pool: Pool, pivots: number): Relaxed {
  const { first } = pool;
  const { sizes } = room;
  const windows = room.crowd.length;
  const programme = startOf(room, worth);
  const offset = programme.columns.length;
  let best: Omit<Relaxed, 'taken'> | undefined;
  for (let left = pivots; left > 0; ) {
    for (const { column } of pool.ways.slice(programme.columns.length - offset)) programme.columns.push(column);
    left -= 1 + optimise(programme, left);
    const { duals } = programme;
    const between = (worst: number, from: number, length: number, kept: Float64Array | undefined) =>
      Float64Array.from({ length }, (_, r) => {
        const price = Math.min(worst, Math.max(0, -duals[from + r]!));
        return kept ? KEPT * kept[r]! + (1 - KEPT) * price : price;
      });
    let isNew = false;
    for (const kept of best ? [best.prices, undefined] : [undefined]) {
      const prices = { crowd: between(worth.crowd, first.length, windows, kept?.crowd), stretch: between(worth.stretch, first.length + windows, model.stretches, kept?.stretch) };
      const at = priceAt(model, prices);
      let bound = 0;
      prices.crowd.forEach((price, w) => (bound -= price * room.crowd[w]!));
      prices.stretch.forEach((price, b) => (bound -= price * Math.max(0, room.stretch[b]!)));
      first.forEach((player, kind) => {
        const { strokes, change } = model.players[player]!;
        const points = change.map((own, i) => own + at[i]!);
        for (let copy = 0; copy < Math.min(COPIES, sizes[kind]!); copy++) {
          const way = cheapestPath(strokes, points, []);
          if (copy === 0) bound += sizes[kind]! * way.cost;
          isNew = addWay(model, pool, kind, way.changes) || isNew;
          for (const instant of way.changes) points[instant]! += ASIDE;
        }
      });
      if (!best || bound > best.bound) best = { bound, prices };
      if (isNew) break;
    }
    const value = programme.basis.reduce((sum, column, r) => sum + programme.columns[column]!.cost * programme.level[r]!, 0);
    if (!isNew || value - best!.bound < 0.2) break;
  }
  const level = new Map(Array.from(programme.basis, (column, r) => [column, programme.level[r]!]));
  const taken = pool.ways.flatMap(({ kind, changes }, w) => ((level.get(offset + w) ?? 0) > 1e-6 ? [{ kind, changes, amount: level.get(offset + w)! }] : []));
  return { ...best!, taken };
}
