import type { Draft } from './draft.ts';
import { CROWDED, put, take } from './draft.ts';
import type { Master, Prices, Taken } from './master.ts';
import { addWay, branchOf, place, priceAt, solve, takenIn } from './master.ts';
import type { Model } from './model.ts';
import type { Unit, Way } from './units.ts';
import { cheapestWay, pointsOf } from './units.ts';
import type { Worth } from './worth.ts';
import { sumOverWindows } from './windows.ts';

/** Share of a way from which it is taken at once; share of the units placed at least per round; chosen, not measured. */
const SURE = 0.9;
const STEP = 0.1;
const PIVOTS = 600;

function putUnit(model: Model, draft: Draft, unit: Unit, way: Way): void {
  unit.forEach((player, m) => put(model, draft, player, way[m]!));
}

function takeUnit(model: Model, draft: Draft, unit: Unit): void {
  for (const player of unit) take(model, draft, player);
}

/** The two of a unit the other way round, where they differ in nothing but the seat. */
function turns(model: Model, unit: Unit, way: Way): Way[] {
  const [a, b] = unit.map((player) => model.problem.players[player]!);
  const [one, other] = unit.map((player) => model.players[player]!);
  const alike = b && other && a!.limit === b.limit && a!.comfortable === b.comfortable && one!.change.every((points, i) => points === other.change[i]);
  return alike ? [way, [way[1]!, way[0]!]] : [way];
}

/** Puts one unit of the kind in on this way, whichever of them it costs least; false where it would break a rule for all of them. */
function seat(draft: Draft, { model, kinds }: Master, { kind, way }: Taken): boolean {
  const before = draft.total;
  let chosen: { unit: Unit; turned: Way } | undefined;
  let least = CROWDED;
  for (const unit of kinds[kind]!) {
    if (draft.isIn[unit[0]!]) continue;
    for (const turned of turns(model, unit, way)) {
      putUnit(model, draft, unit, turned);
      const added = draft.total - before;
      takeUnit(model, draft, unit);
      if (added >= least) continue;
      least = added;
      chosen = { unit, turned };
    }
  }
  if (!chosen) return false;
  putUnit(model, draft, chosen.unit, chosen.turned);
  return true;
}

/** Where the programme offers nothing that fits: the cheapest way that finds room, else the one that breaks least. */
function wayLeft({ model, kinds, sizes, room }: Master, draft: Draft, prices: Float64Array): { kind: number; way: Way } {
  const kind = sizes.findIndex((size) => size > 0);
  const unit = kinds[kind]!.find(([player]) => !draft.isIn[player!])!;
  const full = sumOverWindows(model.crowd, Array.from(room.crowd, (left) => (left > 0 ? 0 : 1)));
  const at = (worst: number) => Float64Array.from(prices, (price, i) => price + (full[i]! > 0 ? worst : 0));
  const [strict, soft] = [Infinity, CROWDED].map((worst) => cheapestWay(model, unit, unit.map((player) => pointsOf(model, player, at(worst)))));
  return { kind, way: strict!.cost < Infinity ? strict!.changes : soft!.changes };
}

/**
 * A whole plan from a fractional one: takes the ways with the largest share, solves the rest again in the room that is left, and so on.
 * @param root the programme, solved; it stays as it is
 * @param prices of the root
 * @param draft whoever is in it already stays; the units of the programme are put in
 * @param jitter how far chance shifts the order, in shares of a way, so that another dive finds another plan
 */
export function dive(root: Master, prices: Prices, draft: Draft, worth: Worth, jitter: number, chance: () => number): void {
  const master = branchOf(root);
  let at = priceAt(master.model, prices);
  for (let left = master.sizes.reduce((sum, size) => sum + size, 0); left > 0; ) {
    const least = Math.max(1, Math.ceil(left * STEP));
    const ways = takenIn(master).map((way) => ({ way, key: way.amount + jitter * chance() })).sort((a, b) => b.key - a.key);
    let placed = 0;
    for (const { way } of ways) {
      for (let share = way.amount; share > 1e-6; share -= 1) {
        if ((share < SURE && placed >= least) || master.sizes[way.kind] === 0) break;
        if (!seat(draft, master, way)) break;
        place(master, way);
        placed++;
      }
    }
    if (placed === 0) {
      const { kind, way } = wayLeft(master, draft, at);
      putUnit(master.model, draft, master.kinds[kind]!.find(([player]) => !draft.isIn[player!])!, way);
      place(master, { column: addWay(master, kind, way), kind, way, amount: 1 });
      placed = 1;
    }
    left -= placed;
    if (left > 0) at = priceAt(master.model, solve(master, worth, PIVOTS).prices);
  }
}
