import type { Mark } from '../../music/mark.ts';

function same(a: unknown, b: unknown): boolean {
  if (a === b) return true;
  if (typeof a !== 'object' || typeof b !== 'object' || a === null || b === null) return false;
  const [one, other] = [a as Record<string, unknown>, b as Record<string, unknown>];
  const keys = Object.keys(one);
  return keys.length === Object.keys(other).length && keys.every((key) => same(one[key], other[key]));
}

/**
 * Notes whose marks differ between two readings of a part. Order counts, as a later mark covers an earlier one. Both hold marks by note.
 * Example: one mark more in the middle gives its note alone.
 */
export function changedNotes(before: ReadonlyMap<string, readonly Mark[]>, after: ReadonlyMap<string, readonly Mark[]>): string[] {
  const gone = [...before.keys()].filter((note) => !after.has(note));
  return [...gone, ...[...after].filter(([note, marks]) => !same(before.get(note), marks)).map(([note]) => note)];
}
