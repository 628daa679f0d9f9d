import { chanceFrom } from './chance.ts';
import type { Candidate, Choice, Settled } from './choice.ts';
import { costOfChoice } from './choice.ts';
import type { Column, Programme } from './simplex.ts';
import { optimise, programmeAt } from './simplex.ts';

/** Points of a candidate that is ruled out on a branch: above every sum of costs, low enough to stay exact in floating point. */
const RULED_OUT = 1e6;
/** Simplex steps at one node, at most; chosen by trying. */
const PIVOTS = 300;
/** A candidate must promise so much to be looked at. */
const PROMISE = 0.004;

/** A search among the choices: what is known of every column, and the best choice so far. */
export interface Search {
  choice: Choice;
  /** Group of each column that is a candidate, and its place there. */
  group: number[];
  place: number[];
  /** Columns before the first candidate. */
  offset: number;
  best: number;
  picked: readonly number[];
  /** A choice that really costs more than the rows say, where one was met. */
  misjudged?: readonly number[];
}

const columnFor = ({ cost, rows, values }: Candidate, group: number, groups: number): Column => ({
  cost,
  rows: Int32Array.from([group, ...Array.from(rows, (r) => groups + r)]),
  values: Float64Array.from([1, ...values]),
});

/** The programme of a choice, standing at the choice that is known. */
export function programmeFrom(choice: Choice, known: readonly number[]): { programme: Programme; search: Search } {
  const { groups, rows } = choice;
  // Right sides a little apart keep the simplex from turning in circles.
  const chance = chanceFrom(groups.length + rows.length);
  const right = [...groups.map(() => 1), ...rows.map(({ room }) => room + 1e-4 * chance())];
  const single = (r: number, cost: number, value: number): Column => ({ cost, rows: Int32Array.of(r), values: Float64Array.of(value) });
  const columns = rows.flatMap(({ over }, r) => [single(groups.length + r, 0, 1), single(groups.length + r, over, -1)]);
  const offset = columns.length;
  const group: number[] = [];
  const place: number[] = [];
  const first = groups.map((candidates, g) => {
    const from = columns.length;
    candidates.forEach((candidate, c) => {
      columns.push(columnFor(candidate, g, groups.length));
      group.push(g);
      place.push(c);
    });
    return from;
  });
  return {
    programme: programmeAt(columns, right, known.map((candidate, g) => first[g]! + candidate), rows.map((_, r) => [2 * r, 2 * r + 1])),
    search: { choice, group, place, offset, best: choice.judge?.(known) ?? costOfChoice(choice, known), picked: known },
  };
}

const candidateAt = ({ choice, group, place, offset }: Search, column: number): Candidate => choice.groups[group[column - offset]!]![place[column - offset]!]!;

/** A feature a group has in part: in a share of its candidates in the programme, from 0 to 1. */
export interface Share {
  group: number;
  feature: number;
  share: number;
}

/** The share of each feature in the programme. */
export function sharesIn(search: Search, { basis, level }: Programme): Share[] {
  const shares = search.choice.groups.map(() => new Map<number, number>());
  basis.forEach((column, r) => {
    if (column < search.offset || level[r]! < 1e-6) return;
    const known = shares[search.group[column - search.offset]!]!;
    for (const feature of candidateAt(search, column).features) known.set(feature, (known.get(feature) ?? 0) + level[r]!);
  });
  return shares.flatMap((known, group) => [...known].map(([feature, share]): Share => ({ group, feature, share })));
}

/** The candidate of each group with the largest share. */
export function pickedIn(search: Search, { basis, level }: Programme): number[] {
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

/** Gives candidates from column `from` on their points on this branch: those that do not keep to what is settled are ruled out. */
export function settle(search: Search, { columns, cost }: Programme, settled: readonly Settled[], from: number): void {
  const byGroup = search.choice.groups.map((): Settled[] => []);
  for (const one of settled) byGroup[one.group]!.push(one);
  for (let column = Math.max(from, search.offset); column < columns.length; column++) {
    const candidate = candidateAt(search, column);
    cost[column] = byGroup[search.group[column - search.offset]!]!.every((one) => keeps(candidate, one)) ? candidate.cost : RULED_OUT;
  }
}

/** Solves the programme of a node, looking for candidates in so many rounds at most. */
export function relax(search: Search, programme: Programme, settled: readonly Settled[], rounds: number): void {
  const { choice } = search;
  const groups = choice.groups.length;
  for (let round = 0; round < rounds; round++) {
    optimise(programme, PIVOTS);
    if (!choice.find) return;
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
    if (columns.length === known) return;
    settle(search, programme, settled, known);
  }
}

/** Compares a choice with the best so far. */
export function weigh(search: Search, picked: readonly number[]): void {
  const { choice } = search;
  const cost = costOfChoice(choice, picked);
  if (cost >= search.best) return;
  const really = choice.judge?.(picked) ?? cost;
  if (really > cost) search.misjudged = picked;
  if (really >= search.best) return;
  search.best = really;
  search.picked = picked;
}
