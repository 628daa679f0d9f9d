import type { Finding } from '../check/finding.ts';
import type { Mute } from './state.ts';

/** The mute that puts a finding to rest as the music stands there now, or a whole rule; undefined where none does. Example: a mute of another fingerprint does not. */
export function muteOf({ rule, place, fingerprint }: Finding, mutes: Record<string, Mute>): Mute | undefined {
  return Object.values(mutes).find((mute) => mute.rule === rule && (mute.place === '*' || (mute.place === place && mute.fingerprint === fingerprint)));
}

/** Findings nobody has put to rest, in the same order. Example: `heard(findings, {})` are all of them. */
export const heard = (findings: readonly Finding[], mutes: Record<string, Mute>): Finding[] => findings.filter((finding) => !muteOf(finding, mutes));
