import type { Attempts } from './attempts.ts';

export function createMemoryAttempts(): Attempts {
  const counted = new Map<string, { count: number; until: number }>();
  return {
    async count(key, seconds, now) {
      const at = now.getTime();
      for (const [old, { until }] of counted) if (until <= at) counted.delete(old);
      const one = counted.get(key) ?? { count: 0, until: at + seconds * 1000 };
      one.count += 1;
      counted.set(key, one);
      return one.count;
    },
    async forget(key) {
      counted.delete(key);
    },
  };
}
