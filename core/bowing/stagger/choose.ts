import { chanceFrom } from './chance.ts';
import type { Column, Programme } from './simplex.ts';
import { copyOf, optimise, programmeAt, reprice, valueOf } from './simplex.ts';

/** One of the things a group may take. */
export interface Candidate {
  /** Whole points. */
  cost: number;
  /** Rows it uses, and how much of each. */
  rows: Int32Array;
  values: Float64Array;
  /** What it is made of, by which candidates of its group are told apart. */
  features: Int32Array;
}

/** What all groups share: so much room, and points for each beyond it. */
export interface Row {
  room: number;
  over: number;
}

/** What is settled on a branch: a group has a feature, or lacks it. */
export interface Settled {
  group: number;
  feature: number;
  has: boolean;
}

export interface Choice {
  /** Candidates known at the start; those found on the way are added. */
  groups: Candidate[][];
  rows: readonly Row[];
  /** The cheapest candidate of a group at these points a row that keeps to what is settled, if it costs less than `below`. */
  find?: (group: number, prices: Float64Array, settled: readonly Settled[], below: number) => Candidate | undefined;
  /** What a choice really costs, where the rows do not say all of it: their points or more. */
  judge?: (picked: readonly number[]) => number;
}

/** The cheapest choice found; `isProved` when there is none cheaper; `misjudged`: the search stopped at a choice that really costs more than the rows say. */
export interface Chosen {
  picked: readonly number[];
  cost: number;
  isProved: boolean;
  misjudged?: readonly number[];
}

/** Points of a candidate that is ruled out on a branch: above every sum of costs, low enough to stay exact in floating point. */
const RULED_OUT = 1e6;
/** Simplex steps and rounds of looking for candidates at one node, at most; chosen by trying. */
const PIVOTS = 300;
const ROUNDS = 30;
/** A candidate must promise so much to be looked at. */
const PROMISE = 0.004;
/** Costs are whole points and the right sides a little apart: a bound this much above a whole number counts as it. */
const ROUNDING = 0.1;

/** Points of one candidate a group, with what is beyond the room. Example: two candidates of 10 in a row for one, at 7 beyond: 27. */
export function costOfChoice({ groups, rows }: Choice, picked: readonly number[]): number {
  const used = new Float64Array(rows.length);
  let cost = 0;
  picked.forEach((candidate, g) => {
    const { cost: own, rows: on, values } = groups[g]![candidate]!;
    cost += own;
    on.forEach((r, k) => {
      used[r]! += values[k]!;
    });
  });
  return rows.reduce((sum, { room, over }, r) => sum + over * Math.max(0, used[r]! - room), cost);
}

interface Search {
  choice: Choice;
  /** Group of each column that is a candidate, and its place there. */
  group: number[];
  place: number[];
  /** Columns before the first candidate. */
  offset: number;
  best: number;
  picked: readonly number[];
  nodes: number;
  isProved: boolean;
  misjudged?: readonly number[];
}

const columnFor = ({ cost, rows, values }: Candidate, group: number, groups: number): Column => ({
  cost,
  rows: Int32Array.from([group, ...Array.from(rows, (r) => groups + r)]),
  values: Float64Array.from([1, ...values]),
});

/** The programme, standing at the choice that is known. */
function programmeFrom(choice: Choice, known: readonly number[]): { programme: Programme; search: Search } {
  const { groups, rows } = choice;
  const chance = chanceFrom(groups.length + rows.length);
  const right = [...groups.map(() => 1), ...rows.map(({ room }) => room + 1e-4 * chance())];
  const single = (r: number, cost: number, value: number): Column => ({ cost, rows: Int32Array.of(r), values: Float64Array.of(value) });
  const columns = rows.flatMap(({ over }, r) => [single(groups.length + r, 0, 1), single(groups.length + r, over, -1)]);
  const offset = columns.length;
  const group: number[] = [];
  const place: number[] = [];
  groups.forEach((candidates, g) => {
    candidates.forEach((candidate, c) => {
      columns.push(columnFor(candidate, g, groups.length));
      group.push(g);
      place.push(c);
    });
  });
  return {
    programme: programmeAt(columns, right, known.map((candidate, g) => offset + group.indexOf(g) + candidate), rows.map((_, r) => [2 * r, 2 * r + 1])),
    search: { choice, group, place, offset, best: choice.judge?.(known) ?? costOfChoice(choice, known), picked: known, nodes: 0, isProved: true },
  };
}

const candidateAt = ({ choice, group, place, offset }: Search, column: number): Candidate => choice.groups[group[column - offset]!]![place[column - offset]!]!;

/** The share of each feature in the programme, the largest below 1 first. */
function undecided(search: Search, { basis, level }: Programme): { group: number; feature: number } | undefined {
  const shares = new Map<number, Map<number, number>>();
  basis.forEach((column, r) => {
    if (column < search.offset || level[r]! < 1e-6) return;
    const group = search.group[column - search.offset]!;
    const known = shares.get(group) ?? new Map<number, number>();
    shares.set(group, known);
    for (const feature of candidateAt(search, column).features) known.set(feature, (known.get(feature) ?? 0) + level[r]!);
  });
  let best: { group: number; feature: number } | undefined;
  let largest = 1e-3;
  for (const [group, known] of shares) {
    for (const [feature, share] of known) {
      if (share <= largest || share > 1 - 1e-3) continue;
      largest = share;
      best = { group, feature };
    }
  }
  return best;
}

function pickedIn(search: Search, { basis, level }: Programme): number[] {
  const most = new Float64Array(search.choice.groups.length);
  const picked = new Array<number>(most.length).fill(0);
  basis.forEach((column, r) => {
    if (column < search.offset) return;
    const g = search.group[column - search.offset]!;
    if (level[r]! <= most[g]!) return;
    most[g] = level[r]!;
    picked[g] = search.place[column - search.offset]!;
  });
  return picked;
}

const keeps = ({ features }: Candidate, { feature, has }: Settled): boolean => features.includes(feature) === has;

/** Gives candidates found since on other branches their points here, and rules out what the newest settled thing excludes. */
function settle(search: Search, { columns, cost }: Programme, settled: readonly Settled[], from: number): void {
  for (let column = from; column < columns.length; column++) {
    const group = search.group[column - search.offset]!;
    const candidate = candidateAt(search, column);
    cost[column] = settled.every((one) => one.group !== group || keeps(candidate, one)) ? candidate.cost : RULED_OUT;
  }
}

/** Solves the programme of a node, looking for candidates on the way. Returns whether its value bounds every choice of the branch. */
function relax(search: Search, programme: Programme, settled: readonly Settled[]): boolean {
  const { choice } = search;
  const groups = choice.groups.length;
  for (let round = 0; round < ROUNDS; round++) {
    const isDone = optimise(programme, PIVOTS) < PIVOTS;
    if (!choice.find) return isDone;
    const { duals, columns } = programme;
    const known = columns.length;
    const prices = Float64Array.from(choice.rows, ({ over }, r) => Math.min(over, Math.max(0, -duals[groups + r]!)));
    for (let g = 0; g < groups; g++) {
      const found = choice.find(g, prices, settled.filter(({ group }) => group === g), duals[g]! - PROMISE);
      if (!found) continue;
      search.group.push(g);
      search.place.push(choice.groups[g]!.push(found) - 1);
      columns.push(columnFor(found, g, groups));
    }
    if (columns.length === known) return isDone;
    settle(search, programme, settled, known);
  }
  return false;
}

/** Compares a choice with the best so far. */
function weigh(search: Search, picked: readonly number[]): void {
  const { choice } = search;
  const cost = costOfChoice(choice, picked);
  if (cost >= search.best) return;
  const really = choice.judge?.(picked) ?? cost;
  if (really > cost) search.misjudged = picked;
  if (really >= search.best) return;
  search.best = really;
  search.picked = picked;
}

function descend(search: Search, programme: Programme, settled: readonly Settled[]): void {
  if (search.misjudged) return;
  if (search.nodes-- <= 0) {
    search.isProved = false;
    return;
  }
  settle(search, programme, settled, search.offset);
  reprice(programme);
  const isBound = relax(search, programme, settled);
  weigh(search, pickedIn(search, programme));
  if (Math.ceil(valueOf(programme) - ROUNDING) >= search.best) {
    if (!isBound) search.isProved = false;
    return;
  }
  const next = undecided(search, programme);
  if (!next) {
    search.isProved &&= isBound;
    return;
  }
  for (const has of [true, false]) descend(search, copyOf(programme), [...settled, { ...next, has }]);
}

/**
 * One candidate for each group at the least cost in all, each row's overrun included, by branch and price: a linear programme at each node, candidates looked
 * for at its prices, branching on whether a group has the feature it has most nearly.
 * @param known a choice to start from
 * @param nodes at most so many nodes
 * @returns the cheapest choice found, `known` where there is none cheaper; invariant: never dearer than `known`. Oracle: all combinations.
 */
export function choose(choice: Choice, known: readonly number[], nodes: number): Chosen {
  const { programme, search } = programmeFrom(choice, known);
  search.nodes = nodes;
  descend(search, programme, []);
  const { picked, best, isProved, misjudged } = search;
  return { picked, cost: best, isProved: isProved && !misjudged, ...(misjudged ? { misjudged } : {}) };
}
