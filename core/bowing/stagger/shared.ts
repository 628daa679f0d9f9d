import type { Candidate, Row } from './choice.ts';
import { EVENNESS } from './costs/evenness.ts';
import { NEIGHBOUR } from './costs/neighbour.ts';
import type { Draft } from './draft.ts';
import type { Model } from './model.ts';
import type { Unit, Way } from './units.ts';
import { wayCost } from './units.ts';
import { sumOverWindows } from './windows.ts';

/** Points of one change too many while a choice is made: more than a whole way costs, little enough to stay exact. */
const TOO_MANY = 1e4;

/** Two neighbours, both out, and a crowd window they should not both change in. */
export interface Meeting {
  players: readonly [number, number];
  window: number;
}

/** What the units that are out share among them: rows of a choice. */
export interface Shared {
  rows: Row[];
  /** Row of each crowd window and stretch that could get too full; -1 for the others. */
  crowd: Int32Array;
  stretch: Int32Array;
  /** For each player the windows shared with a neighbour, and their rows. */
  meetings: ReadonlyMap<number, readonly { window: number; row: number }[]>;
  /** For each player points of a change at each usable instant for changing near neighbours who are in. */
  beside: ReadonlyMap<number, Float64Array>;
}

function besideOf(model: Model, draft: Draft, player: number): Float64Array {
  const near = model.players[player]!.neighbours.filter((other) => draft.isIn[other]);
  return sumOverWindows(model.crowd, Array.from(draft.crowdCount, (_, w) => NEIGHBOUR * near.reduce((sum, other) => sum + draft.inCrowd[other]![w]!, 0)));
}

/** The rows for these players, who are out of the draft. */
export function sharedBy(model: Model, draft: Draft, players: readonly number[], met: readonly Meeting[]): Shared {
  const rows: Row[] = [];
  const rowFor = (room: number, over: number) => (room >= players.length ? -1 : rows.push({ room, over }) - 1);
  const crowd = Int32Array.from(draft.crowdCount, (count) => rowFor(model.allowed - count, TOO_MANY));
  const stretch = Int32Array.from(draft.stretchCount, (count) => rowFor(model.share - count, EVENNESS));
  const meetings = new Map<number, { window: number; row: number }[]>(players.map((player) => [player, []]));
  for (const { players: pair, window } of met) {
    if (pair.some((player) => !meetings.has(player))) continue;
    const row = rows.push({ room: 1, over: NEIGHBOUR }) - 1;
    for (const player of pair) meetings.get(player)!.push({ window, row });
  }
  return { rows, crowd, stretch, meetings, beside: new Map(players.map((player) => [player, besideOf(model, draft, player)])) };
}

const isWithin = ({ crowd }: Model, instant: number, window: number): boolean => crowd.from[instant]! <= window && window <= crowd.to[instant]!;

/** Rows of the crowd windows a change at an instant lies in. */
export function crowdRowsOf(model: Model, { crowd }: Shared, instant: number): number[] {
  const rows: number[] = [];
  for (let w = model.crowd.from[instant]!; w <= model.crowd.to[instant]!; w++) if (crowd[w]! >= 0) rows.push(crowd[w]!);
  return rows;
}

/** A way as a candidate. Its cost counts the neighbours who are in. */
export function candidateOf(model: Model, { crowd, stretch, meetings, beside }: Shared, unit: Unit, way: Way): Candidate {
  const counts = new Map<number, number>();
  const add = (row: number) => row >= 0 && counts.set(row, (counts.get(row) ?? 0) + 1);
  let cost = wayCost(model, unit, way);
  unit.forEach((player, m) => {
    for (const instant of way[m]!) {
      for (let w = model.crowd.from[instant]!; w <= model.crowd.to[instant]!; w++) add(crowd[w]!);
      add(stretch[model.stretch[instant]!]!);
      cost += beside.get(player)![instant]!;
    }
    for (const { window, row } of meetings.get(player)!) if (way[m]!.some((instant) => isWithin(model, instant, window))) add(row);
  });
  return {
    cost,
    rows: Int32Array.from(counts.keys()),
    values: Float64Array.from(counts.values()),
    features: Int32Array.from(way.flatMap((list, m) => list.map((instant) => m * model.usable.length + instant))),
  };
}

/** Points of a change at each usable instant for one player, at these points a row. */
export function pointsAt(model: Model, shared: Shared, player: number, prices: Float64Array): Float64Array {
  const at = (row: number) => (row < 0 ? 0 : prices[row]!);
  const perWindow = Float64Array.from(shared.crowd, at);
  for (const { window, row } of shared.meetings.get(player)!) perWindow[window]! += prices[row]!;
  const over = sumOverWindows(model.crowd, perWindow);
  const beside = shared.beside.get(player)!;
  return Float64Array.from(model.players[player]!.change, (own, i) => own + beside[i]! + over[i]! + at(shared.stretch[model.stretch[i]!]!));
}

/** Where neighbours of a whole draft change in one window. */
export function meetingsIn(model: Model, draft: Draft, players: readonly number[]): Meeting[] {
  return players.flatMap((player) =>
    model.players[player]!.neighbours.flatMap((other) => (other > player && players.includes(other) ? Array.from(draft.crowdCount, (_, window) => window).filter((w) => draft.inCrowd[player]![w]! & draft.inCrowd[other]![w]!).map((window): Meeting => ({ players: [player, other], window })) : [])),
  );
}
