import type { Choice, Chosen, Settled } from './choice.ts';
import type { Search } from './relax.ts';
import { pickedIn, programmeFrom, relax, settle, sharesIn, weigh } from './relax.ts';
import type { Programme } from './simplex.ts';
import { copyOf, reprice, valueOf } from './simplex.ts';

/** Share from which a feature is settled at once; share of the features settled at least per round; rounds of looking for candidates each time. Chosen by trying. */
const SURE = 0.9;
const STEP = 0.06;
const ROUNDS = 4;
const MOST_ROUNDS = 20;

/** The features to settle next, the surest first: one unsure feature a group, as two of them need not go together. */
function nextOf(search: Search, programme: Programme, settled: readonly Settled[], jitter: number, chance: () => number): Settled[] {
  const { choice } = search;
  const keys = new Set(settled.map(({ group, feature }) => `${group} ${feature}`));
  const open = sharesIn(search, programme).filter(({ group, feature }) => !keys.has(`${group} ${feature}`));
  if (open.every(({ share }) => share > 1 - 1e-3)) return [];
  const order = open.map((one) => ({ ...one, key: one.share + (one.share > SURE ? 1 : jitter * chance()) })).sort((a, b) => b.key - a.key);
  const least = Math.max(1, Math.ceil(STEP * order.length));
  const unsure = new Set<number>();
  const room = choice.rows.map((row) => row.room);
  for (const { group, feature, has } of settled) if (has) for (const r of choice.rowsOf?.(group, feature) ?? []) room[r]!--;
  const taken = order.filter(({ group, feature, share }) => {
    if (share <= SURE && (unsure.size >= least || unsure.has(group))) return false;
    const rows = choice.rowsOf?.(group, feature) ?? [];
    if (rows.some((r) => room[r]! < 1)) return false;
    for (const r of rows) room[r]!--;
    if (share <= SURE) unsure.add(group);
    return true;
  });
  return taken.map(({ group, feature }) => ({ group, feature, has: true }));
}

/**
 * A cheap choice in one go: solves the programme, settles the features that have the largest shares, solves what is left, and so on; where that leads to nothing
 * cheaper than the best known, fewer are settled at once, and at last the one that leads nowhere is ruled out. Proves nothing.
 * @param known a choice to start from
 * @param jitter how far chance shifts the order, in shares, so that another plunge finds another choice
 * @param nodes programmes solved at most
 * @returns the cheapest choice met, `known` where there is none cheaper
 */
export function plunge(choice: Choice, known: readonly number[], jitter: number, chance: () => number, nodes: number): Chosen {
  const { programme: root, search } = programmeFrom(choice, known);
  let programme = root;
  let settled: readonly Settled[] = [];
  let before = programme;
  let batch: readonly Settled[] = [];
  for (let node = 0; node < nodes; node++) {
    const all = [...settled, ...batch];
    settle(search, programme, all, 0);
    reprice(programme);
    relax(search, programme, all, ROUNDS);
    if (valueOf(programme) > search.best - 0.9 && batch.length <= 1) relax(search, programme, all, MOST_ROUNDS);
    weigh(search, pickedIn(search, programme));
    if (search.misjudged) break;
    if (valueOf(programme) <= search.best - 0.9) {
      settled = all;
      batch = nextOf(search, programme, settled, jitter, chance);
      if (batch.length === 0) break;
      before = programme;
    } else if (batch.length > 1) {
      batch = batch.slice(0, Math.ceil(batch.length / 4));
    } else {
      const [one] = batch;
      if (!one || !one.has) break;
      batch = [{ ...one, has: false }];
    }
    programme = copyOf(before);
  }
  const { picked, best, misjudged } = search;
  return { picked, cost: best, ...(misjudged ? { misjudged } : {}) };
}
