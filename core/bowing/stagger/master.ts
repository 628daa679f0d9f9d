import { chanceFrom } from './chance.ts';
import type { Model } from './model.ts';
import type { Column, Programme } from './simplex.ts';
import { addColumn, copyOf, fix, optimise, programmeOf, restore, valueOf } from './simplex.ts';
import type { Unit, Way } from './units.ts';
import { cheapestWay, pointsOf, wayCost } from './units.ts';
import { sumOverWindows } from './windows.ts';
import type { Worth } from './worth.ts';

/** Prices of a change at one instant in crowd windows and stretches. */
export interface Prices {
  crowd: Float64Array;
  stretch: Float64Array;
}

/** A way some units of one kind take, and how many of them (fractions allowed). */
export interface Taken {
  /** Index of its column. */
  column: number;
  kind: number;
  way: Way;
  amount: number;
}

/** The linear programme over ways found so far, for the units not placed yet. */
export interface Master {
  model: Model;
  /** Units that differ in nothing but where they sit: one kind. The first stands for all. */
  kinds: readonly (readonly Unit[])[];
  /** Units of each kind still to be placed. */
  sizes: number[];
  /** Changes each crowd window and stretch still takes; a stretch may be over. */
  room: { crowd: Int32Array; stretch: Int32Array };
  programme: Programme;
  /** Columns before the first way. */
  offset: number;
  ways: { kind: number; way: Way }[];
  /** Column of each way, by its key. */
  seen: Map<string, number>;
}

/** Points of a unit without a way at the start: above any way's cost, low enough to stay exact in floating point. */
const UNMET = 1e5;

const keyOf = (model: Model, unit: Unit): string =>
  unit.map((p) => `${model.problem.players[p]!.limit} ${model.problem.players[p]!.comfortable} ${model.players[p]!.change.join(' ')}`).join('/');

const columnWith = (cost: number, row: number, value: number): Column => ({ cost, rows: Int32Array.of(row), values: Float64Array.of(value) });

/** A programme without ways, for everybody and all the room there is. */
export function masterOf(model: Model, units: readonly Unit[], worth: Worth): Master {
  const byKey = new Map<string, Unit[]>();
  for (const unit of units) {
    const key = keyOf(model, unit);
    byKey.set(key, [...(byKey.get(key) ?? []), unit]);
  }
  const kinds = [...byKey.values()];
  const sizes = kinds.map((kind) => kind.length);
  const windows = model.crowd.first.length;
  const room = { crowd: new Int32Array(windows).fill(model.allowed), stretch: new Int32Array(model.stretches).fill(model.share) };
  // Right sides a little apart keep the simplex from turning in circles; the bound is proved with the true ones.
  const chance = chanceFrom(kinds.length + windows);
  const right = [...sizes, ...[...room.crowd, ...room.stretch].map((left) => left + 1e-3 * chance())];
  const basis = right.map((_, r) => columnWith(r < kinds.length ? UNMET : 0, r, 1));
  const over = right.slice(kinds.length).map((_, r) => columnWith(r < windows ? worth.crowd : worth.stretch, kinds.length + r, -1));
  return { model, kinds, sizes, room, programme: programmeOf([...basis, ...over], right), offset: basis.length + over.length, ways: [], seen: new Map() };
}

/** A copy to place units in; ways found in it stay its own. */
export function branchOf(master: Master): Master {
  return { ...master, sizes: [...master.sizes], room: { crowd: master.room.crowd.slice(), stretch: master.room.stretch.slice() }, programme: copyOf(master.programme), ways: [...master.ways], seen: new Map(master.seen) };
}

function columnOf({ model, kinds }: Master, kind: number, way: Way): Column {
  const { crowd, stretch } = model;
  const counts = new Map<number, number>([[kind, 1]]);
  const add = (row: number) => counts.set(row, (counts.get(row) ?? 0) + 1);
  for (const instant of way.flat()) {
    for (let w = crowd.from[instant]!; w <= crowd.to[instant]!; w++) add(kinds.length + w);
    add(kinds.length + crowd.first.length + stretch[instant]!);
  }
  return { cost: wayCost(model, kinds[kind]![0]!, way), rows: Int32Array.from(counts.keys()), values: Float64Array.from(counts.values()) };
}

/** Adds a way where it is not there yet. Returns its column. */
export function addWay(master: Master, kind: number, way: Way): number {
  const key = `${kind}:${way.join('|')}`;
  const known = master.seen.get(key);
  if (known !== undefined) return known;
  const column = addColumn(master.programme, columnOf(master, kind, way));
  master.seen.set(key, column);
  master.ways.push({ kind, way });
  return column;
}

/** Points of a change at each usable instant at these prices. */
export function priceAt(model: Model, { crowd, stretch }: Prices): Float64Array {
  return sumOverWindows(model.crowd, crowd).map((price, i) => price + stretch[model.stretch[i]!]!);
}

/** What the room that is left is worth at these prices: whatever the units cost, the bound is this much less. */
export function roomWorth({ room }: Master, prices: Prices): number {
  let worth = 0;
  prices.crowd.forEach((price, w) => (worth += price * room.crowd[w]!));
  prices.stretch.forEach((price, b) => (worth += price * room.stretch[b]!));
  return worth;
}

/** Ways looked for at once for units of one kind, and the points by which each next one is kept off the last; chosen, not measured. */
const COPIES = 6;
const ASIDE = 4;

/** Looks for new ways at these prices. Returns the lower bound they prove (Lagrange) and whether a way was new. */
function look(master: Master, prices: Prices): { bound: number; isNew: boolean } {
  const { model, kinds, sizes } = master;
  const at = priceAt(model, prices);
  const known = master.programme.columns.length;
  let isNew = false;
  let bound = -roomWorth(master, prices);
  kinds.forEach(([unit], kind) => {
    if (sizes[kind] === 0) return;
    const points = unit!.map((player) => pointsOf(model, player, at));
    for (let copy = 0; copy < Math.min(COPIES, sizes[kind]!); copy++) {
      const { changes, cost } = cheapestWay(model, unit!, points);
      if (copy === 0) bound += sizes[kind]! * cost;
      isNew = addWay(master, kind, changes) >= known || isNew;
      changes.forEach((list, m) => list.forEach((instant) => (points[m]![instant]! += ASIDE)));
    }
  });
  return { bound, isNew };
}

/** Share of the best prices kept when new ways are looked for, against swinging; chosen, not measured. */
const KEPT = 0.5;
/** Rows of a programme whose simplex steps are counted as they are, and how many steps of a shorter one count as one at most: a step's work grows with the square of the rows. */
const ROWS = 500;
const MOST_STEPS = 8;
/** Points between programme and bound from which on looking further pays no more: costs are whole points. */
const CLOSE = 0.2;

export interface Bounded {
  /** Nothing the units still to be placed can do costs less. */
  bound: number;
  prices: Prices;
  /** Whether the programme was solved to the end, so that its shares are worth something. */
  isSettled: boolean;
}

/**
 * Solves the programme by column generation: crowd windows and evenness as rows, new ways of each unit at its prices. The bound is the Lagrangian value at
 * those prices, computed apart from the programme, so it is valid whatever the simplex did. Costs of neighbours are left out: they can only raise it.
 * @param pivots at most about so many simplex steps in all; more where the rows are few and a step is quick
 * @param start prices to begin from, such as those of an easier programme over the same rows
 */
export function solve(master: Master, worth: Worth, pivots: number, start?: Prices): Bounded {
  const { programme, kinds, room } = master;
  const windows = room.crowd.length;
  const first = start ?? { crowd: new Float64Array(windows), stretch: new Float64Array(room.stretch.length) };
  let best: Bounded = { bound: look(master, first).bound, prices: first, isSettled: false };
  let isFirst = !start;
  const steps = pivots * Math.min(MOST_STEPS, Math.max(1, (ROWS / programme.level.length) ** 2));
  let left = steps - restore(programme, steps);
  for (;;) {
    left -= 1 + optimise(programme, Math.max(1, left));
    const between = (worst: number, from: number, length: number, kept: Float64Array | undefined) =>
      Float64Array.from({ length }, (_, r) => {
        const price = Math.min(worst, Math.max(0, -programme.duals[from + r]!));
        return kept ? KEPT * kept[r]! + (1 - KEPT) * price : price;
      });
    let isNew = false;
    for (const kept of isFirst ? [undefined] : [best.prices, undefined]) {
      const prices = { crowd: between(worth.crowd, kinds.length, windows, kept?.crowd), stretch: between(worth.stretch, kinds.length + windows, room.stretch.length, kept?.stretch) };
      const found = look(master, prices);
      if (found.bound > best.bound) best = { bound: found.bound, prices, isSettled: false };
      isNew = found.isNew;
      if (isNew) break;
    }
    isFirst = false;
    if (!isNew || valueOf(programme) - best.bound < CLOSE) return { ...best, isSettled: true };
    if (left <= 0) return best;
  }
}

/** The ways the programme takes at least in part, largest share first. */
export function takenIn({ programme, offset, ways, sizes }: Master): Taken[] {
  const taken: Taken[] = [];
  programme.basis.forEach((column, r) => {
    const amount = programme.level[r]!;
    const found = ways[column - offset];
    if (found && amount > 1e-6 && sizes[found.kind]! > 0) taken.push({ column, ...found, amount });
  });
  return taken.sort((a, b) => b.amount - a.amount || a.column - b.column);
}

/** Gives one unit of a kind this way for good. */
export function place(master: Master, { column, kind, way }: Taken): void {
  const { model, room, sizes, programme } = master;
  sizes[kind]!--;
  for (const instant of way.flat()) {
    for (let w = model.crowd.from[instant]!; w <= model.crowd.to[instant]!; w++) room.crowd[w]!--;
    room.stretch[model.stretch[instant]!]!--;
  }
  fix(programme, column);
}
