import type { FastifyRateLimitStoreCtor } from '@fastify/rate-limit';
import type { Counts } from './counts.ts';

type Store = InstanceType<FastifyRateLimitStoreCtor>;

/** Our counts in the form that the limit of requests asks for. A route with a limit of its own counts apart. */
export function requestCounts(counts: Counts): FastifyRateLimitStoreCtor {
  const storeFor = (place: string): Store => ({
    incr(key: string, answer: (reason: Error | null, result?: { current: number; ttl: number }) => void, timeWindow: number) {
      counts.add(`${place}:${key}`, Math.ceil(timeWindow / 1000)).then(
        ({ count, left }) => answer(null, { current: count, ttl: left }),
        (reason: Error) => answer(reason),
      );
    },
    child(route) {
      const { method, url } = (route as unknown as { routeInfo: { method: unknown; url: unknown } }).routeInfo;
      return storeFor(`${String(method)} ${String(url)}`);
    },
  });
  return class {
    incr = storeFor('all').incr;
    child = storeFor('all').child;
  } as unknown as FastifyRateLimitStoreCtor;
}
