import type { Mute } from '../../core/agreement/state.ts';
import type { Finding } from '../../core/check/finding.ts';

/** The mute that puts a finding to rest as the music stands there now, or a whole rule. */
export function muteOf({ rule, place, fingerprint }: Finding, mutes: Record<string, Mute>): Mute | undefined {
  return Object.values(mutes).find((mute) => mute.rule === rule && (mute.place === '*' || (mute.place === place && mute.fingerprint === fingerprint)));
}

/** Findings nobody has put to rest. */
export const heard = (findings: readonly Finding[], mutes: Record<string, Mute>): Finding[] => findings.filter((finding) => !muteOf(finding, mutes));

/** What `after` finds that `before` did not: the price of a change. */
export function added(before: readonly Finding[], after: readonly Finding[]): Finding[] {
  const known = new Set(before.map(({ rule, place }) => `${rule} ${place}`));
  return after.filter(({ rule, place }) => !known.has(`${rule} ${place}`));
}
