import type { Apart } from './editionsApart.ts';

/**
 * The measure of a newer edition that each measure of the older one is now, by ordinal; index 0 is measure 1. Measures follow what begins in them; one
 * without anything of its own stands as far from the one before it as it did, and a measure that is gone where it would be.
 * Invariants: as many as the older edition has; never falling; within 1 and `measures`, the count of the newer edition.
 * Example: with a measure put in before measure 3 of four, they are 1, 2, 4, 5.
 */
export function measuresNow({ before, after, partner }: Apart, older: number, measures: number): number[] {
  const found = new Map<number, number>();
  before.forEach(({ measure, notes }, at) => {
    if (notes.length && partner[at]! >= 0 && !found.has(measure)) found.set(measure, after[partner[at]!]!.measure);
  });
  const now: number[] = [];
  let ahead = older + 1;
  const limits: number[] = [];
  for (let measure = older; measure >= 1; measure -= 1) {
    limits[measure] = found.get(measure) ?? (ahead > older ? measures : found.get(ahead)!);
    if (found.has(measure)) ahead = measure;
  }
  for (let measure = 1; measure <= older; measure += 1) {
    const last = now.at(-1) ?? 0;
    now.push(Math.max(1, last, found.get(measure) ?? Math.min(last + 1, limits[measure]!)));
  }
  return now;
}
