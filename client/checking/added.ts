import type { Finding } from '../../core/check/finding.ts';

/** What `after` finds that `before` did not: the price of a change. */
export function added(before: readonly Finding[], after: readonly Finding[]): Finding[] {
  const known = new Set(before.map(({ rule, place }) => `${rule} ${place}`));
  return after.filter(({ rule, place }) => !known.has(`${rule} ${place}`));
}
