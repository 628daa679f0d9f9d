import type { Choice, Chosen, Settled } from './choice.ts';
import type { Draft } from './draft.ts';
import { put, take } from './draft.ts';
import type { Master } from './master.ts';
import { addWay } from './master.ts';
import type { Model } from './model.ts';
import type { Meeting } from './shared.ts';
import { candidateOf, crowdRowsOf, meetingsIn, pointsAt, sharedBy } from './shared.ts';
import { reducedCost } from './simplex.ts';
import type { Unit, Way } from './units.ts';
import { cheapestWay } from './units.ts';

/** Candidates a unit brings at most; chosen by trying. */
const MOST = 60;

/** A unit and the kind it is of. */
export interface Free {
  kind: number;
  unit: Unit;
}

function wayWithin(model: Model, unit: Unit, points: readonly Float64Array[], settled: readonly Settled[], below: number): Way | undefined {
  const size = model.usable.length;
  const musts = unit.map((): number[] => []);
  for (const { feature, has } of settled) {
    const m = Math.floor(feature / size);
    if (has) musts[m]!.push(feature % size);
    else points[m]![feature % size] = Infinity;
  }
  const { changes, cost } = cheapestWay(model, unit, points, below, musts);
  return cost < Infinity ? changes : undefined;
}

/** Ways worth trying for a unit: the present one, and of those known the ones the bound's prices make cheapest that find room. */
function waysFor({ model, programme, ways, offset }: Master, draft: Draft, kind: number, present: Way): Way[] {
  const full = model.usable.map((_, i) => {
    for (let w = model.crowd.from[i]!; w <= model.crowd.to[i]!; w++) if (draft.crowdCount[w]! >= model.allowed) return true;
    return false;
  });
  const same = present.join('|');
  const worth = ways.flatMap(({ kind: other, way }, w) => (other === kind && way.every((list) => list.every((instant) => !full[instant])) && way.join('|') !== same ? [{ way, reduced: reducedCost(programme, offset + w) }] : []));
  worth.sort((a, b) => a.reduced - b.reduced);
  return [present, ...worth.slice(0, MOST).map(({ way }) => way)];
}

/** How a choice is made. */
export type Method = (choice: Choice, known: readonly number[]) => Chosen;

/**
 * Takes these units out and puts them back together, on the cheapest ways found that go with each other and with everybody else. Where the cheapest by the rows
 * of the choice brings neighbours together, that one is put in all the same, to be mended, and the meeting is a row from then on: the draft may be dearer then.
 * @param met where neighbours met so far; more are added
 */
export function rechoose(master: Master, draft: Draft, free: readonly Free[], met: Meeting[], method: Method): void {
  const { model } = master;
  const players = free.flatMap(({ unit }) => unit);
  const takeAll = () => players.forEach((player) => take(model, draft, player));
  const putAll = (taken: readonly Way[]) => taken.forEach((way, u) => free[u]!.unit.forEach((player, m) => put(model, draft, player, way[m]!)));
  const present = free.map(({ unit }): Way => unit.map((player) => draft.changes[player]!));
  takeAll();
  const alone = draft.total;
  const shared = sharedBy(model, draft, players, met);
  const ways = free.map(({ kind }, u) => waysFor(master, draft, kind, present[u]!));
  const groups = ways.map((list, u) => list.map((way) => candidateOf(model, shared, free[u]!.unit, way)));
  const waysOf = (picked: readonly number[]) => picked.map((candidate, u) => ways[u]![candidate]!);
  const find: Choice['find'] = (g, prices, settled, below) => {
    const { kind, unit } = free[g]!;
    const way = wayWithin(model, unit, unit.map((player) => pointsAt(model, shared, player, prices)), settled, below);
    if (!way) return undefined;
    addWay(master, kind, way);
    ways[g]!.push(way);
    return candidateOf(model, shared, unit, way);
  };
  const judge: Choice['judge'] = (picked) => {
    putAll(waysOf(picked));
    const cost = draft.total - alone;
    takeAll();
    return cost;
  };
  const rowsOf: Choice['rowsOf'] = (_, feature) => crowdRowsOf(model, shared, feature % model.usable.length);
  const { picked, misjudged } = method({ groups, rows: shared.rows, find, judge, rowsOf }, groups.map(() => 0));
  putAll(waysOf(misjudged ?? picked));
  if (!misjudged) return;
  const known = new Set(met.map(({ players: [a, b], window }) => `${a} ${b} ${window}`));
  met.push(...meetingsIn(model, draft, players).filter(({ players: [a, b], window }) => !known.has(`${a} ${b} ${window}`)));
}
