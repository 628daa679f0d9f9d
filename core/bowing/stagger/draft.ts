import { EVENNESS } from './costs/evenness.ts';
import { NEIGHBOUR } from './costs/neighbour.ts';
import type { Model } from './model.ts';
import type { Windows } from './windows.ts';

/** Points for each change above what one crowd window allows: broken before anything else when not all can hold. */
export const CROWDED = 1e6;
/** Points for each desk window both partners change in: broken only when crowding cannot avoid it. */
export const CLASH = 3e6;

/** A plan in the making: every player either in it, with changes, or taken out. */
export interface Draft {
  /** Usable instants of each player's changes. */
  changes: (readonly number[])[];
  isIn: boolean[];
  crowdCount: Int32Array;
  stretchCount: Int32Array;
  inCrowd: Uint8Array[];
  inDesk: Uint8Array[];
  /** Points of everything in the draft. */
  total: number;
  /** Points for each change above what one crowd window allows. */
  crowding: number;
}

/** A draft with nobody in it. */
export function emptyDraft(model: Model, crowding = CROWDED): Draft {
  const { players, crowd, desk, stretches } = model;
  return {
    changes: players.map(() => []),
    isIn: players.map(() => false),
    crowdCount: new Int32Array(crowd.first.length),
    stretchCount: new Int32Array(stretches),
    inCrowd: players.map(() => new Uint8Array(crowd.first.length)),
    inDesk: players.map(() => new Uint8Array(desk.first.length)),
    total: 0,
    crowding,
  };
}

/** Points of one player's own strokes and changes, whatever the others do. */
export function ownCost(model: Model, player: number, changes: readonly number[]): number {
  const { strokes, change } = model.players[player]!;
  let cost = strokes.end[(changes.length % 2) as 0 | 1];
  let from = 0;
  for (const instant of changes) {
    cost += strokes.cost[(instant + 1) * strokes.nodes + from]! + change[instant]!;
    from = instant + 1;
  }
  return cost + strokes.cost[(strokes.nodes - 1) * strokes.nodes + from]!;
}

function mark(windows: Windows, changes: readonly number[], row: Uint8Array): void {
  row.fill(0);
  for (const instant of changes) for (let w = windows.from[instant]!; w <= windows.to[instant]!; w++) row[w] = 1;
}

function common(a: Uint8Array, b: Uint8Array): number {
  let count = 0;
  for (let w = 0; w < a.length; w++) count += a[w]! & b[w]!;
  return count;
}

/** Pairs of changes, one each, on one subdivision that comes back later. */
export function farawayClashes(model: Model, a: readonly number[], b: readonly number[]): number {
  return model.faraway.filter(([i, j]) => (a.includes(i) && b.includes(j)) || (a.includes(j) && b.includes(i))).length;
}

function sharedCost(model: Model, draft: Draft, player: number): number {
  const { partner, neighbours } = model.players[player]!;
  let cost = 0;
  if (partner >= 0 && draft.isIn[partner]) {
    cost += CLASH * common(draft.inDesk[player]!, draft.inDesk[partner]!);
    if (model.faraway.length > 0) cost += CLASH * farawayClashes(model, draft.changes[player]!, draft.changes[partner]!);
  }
  for (const other of neighbours) if (draft.isIn[other]) cost += NEIGHBOUR * common(draft.inCrowd[player]!, draft.inCrowd[other]!);
  return cost;
}

function count(model: Model, draft: Draft, changes: readonly number[], step: 1 | -1): number {
  let cost = 0;
  for (const instant of changes) {
    for (let w = model.crowd.from[instant]!; w <= model.crowd.to[instant]!; w++) {
      const before = draft.crowdCount[w]!;
      draft.crowdCount[w] = before + step;
      if (Math.max(before, before + step) > model.allowed) cost += draft.crowding;
    }
    const stretch = model.stretch[instant]!;
    const before = draft.stretchCount[stretch]!;
    draft.stretchCount[stretch] = before + step;
    if (Math.max(before, before + step) > model.share) cost += EVENNESS;
  }
  return cost;
}

/** Takes a player out of the draft. */
export function take(model: Model, draft: Draft, player: number): void {
  const changes = draft.changes[player]!;
  draft.total -= ownCost(model, player, changes) + sharedCost(model, draft, player) + count(model, draft, changes, -1);
  draft.isIn[player] = false;
}

/** Puts a player who is out into the draft with these changes. */
export function put(model: Model, draft: Draft, player: number, changes: readonly number[]): void {
  draft.changes[player] = changes;
  draft.isIn[player] = true;
  mark(model.crowd, changes, draft.inCrowd[player]!);
  mark(model.desk, changes, draft.inDesk[player]!);
  draft.total += ownCost(model, player, changes) + sharedCost(model, draft, player) + count(model, draft, changes, 1);
}

/** Puts everybody back on these changes. */
export function restoreTo(model: Model, draft: Draft, changes: readonly (readonly number[])[]): void {
  changes.forEach((_, player) => take(model, draft, player));
  changes.forEach((list, player) => put(model, draft, player, list));
}
