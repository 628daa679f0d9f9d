import { createHash } from 'node:crypto';
import type { Attempts } from '../store/attempts.ts';

const QUARTER = 15 * 60;

/**
 * How often something may be tried in how many seconds. An account's limit holds for the address that is typed, known or not; who is kept out by somebody
 * else's guessing still comes in by a link or by the orchestra's own sign-in. A house's players share one network address. Chosen, not measured.
 */
const LIMITS = {
  passwordForAddress: { most: 10, seconds: QUARTER },
  passwordFromNetwork: { most: 60, seconds: QUARTER },
  letterToAddress: { most: 3, seconds: QUARTER },
  letterFromNetwork: { most: 30, seconds: QUARTER },
  identityFromNetwork: { most: 60, seconds: QUARTER },
  proofOfPerson: { most: 10, seconds: QUARTER },
  claimOfPerson: { most: 5, seconds: 4 * QUARTER },
} as const;

export type Limit = keyof typeof LIMITS;

/** What is counted is not written down, only its hash. */
const keyOf = (limit: Limit, of: string): string => createHash('sha256').update(`${limit}\n${of}`).digest('hex');

/** Counts one more; false when that is too many. Counted before it is tried, so that many at once are not more than one after another. */
export async function within(attempts: Attempts, limit: Limit, of: string, now: Date): Promise<boolean> {
  const { most, seconds } = LIMITS[limit];
  return (await attempts.count(keyOf(limit, of), seconds, now)) <= most;
}

export const wentWell = (attempts: Attempts, limit: Limit, of: string): Promise<void> => attempts.forget(keyOf(limit, of));
