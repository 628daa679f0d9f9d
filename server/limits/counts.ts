import { RateLimiterMemory, RateLimiterRedis, type RateLimiterAbstract } from 'rate-limiter-flexible';
import type { SharedRedis } from '../redis/openRedis.ts';

export interface Counted {
  /** With this one, since the window began. */
  count: number;
  /** Milliseconds until the window ends. */
  left: number;
}

/** Counts within a window of time: over all servers where they share a Redis, within this one otherwise and while Redis is away. */
export interface Counts {
  add(key: string, seconds: number, by?: number): Promise<Counted>;
  /** The count as it stands, with nothing added. */
  read(key: string, seconds: number): Promise<Counted>;
}

/** The library refuses above a number of points; who asks here decides by the count alone. */
const WITHOUT_END = 1_000_000_000;

export function createCounts(redis: SharedRedis | null): Counts {
  const windows = new Map<number, RateLimiterAbstract>();
  // Ends of windows are kept by the clock of the day: where that is set back, nobody waits longer than a window.
  const leftOf = (ms: number, seconds: number): number => Math.max(0, Math.min(ms, seconds * 1000));

  function windowOf(seconds: number): RateLimiterAbstract {
    const known = windows.get(seconds);
    if (known) return known;
    const options = { points: WITHOUT_END, duration: seconds, keyPrefix: `bowline:count:${seconds}` };
    const memory = new RateLimiterMemory(options);
    const made = redis ? new RateLimiterRedis({ ...options, storeClient: redis.commands, rejectIfRedisNotReady: true, insuranceLimiter: memory }) : memory;
    windows.set(seconds, made);
    return made;
  }

  return {
    async add(key, seconds, by = 1) {
      const { consumedPoints, msBeforeNext } = await windowOf(seconds).consume(key, by);
      return { count: consumedPoints, left: leftOf(msBeforeNext, seconds) };
    },
    async read(key, seconds) {
      const found = await windowOf(seconds).get(key);
      return { count: found?.consumedPoints ?? 0, left: leftOf(found?.msBeforeNext ?? 0, seconds) };
    },
  };
}
