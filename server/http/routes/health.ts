import type { FastifyInstance } from 'fastify';
import { PROTOCOL } from '../../../core/agreement/wire/socket.ts';
import { describe } from '../describe.ts';
import type { Deps } from '../deps.ts';
import { AWAY } from '../errors.ts';
import type { Draining } from '../draining.ts';

const LEAVING = { code: 'LEAVING', text: 'This server is about to stop and takes nobody in any more. Ask again: another one answers.' };

export function healthRoutes(app: FastifyInstance, deps: Deps, { draining, redis }: { draining: Draining; redis: { up(): boolean } | null }): void {
  const description = describe();
  const unlimited = { config: { rateLimit: false } };
  app.get('/api/openapi.json', async () => description);

  // Whether the process lives: one that waits for its database is not helped by being ended.
  app.get('/api/health', unlimited, async () => ({ well: true, protocol: PROTOCOL }));

  // Whether people may be sent here. Redis is told of and not asked for: without it the heartbeat brings what hints would have.
  app.get('/api/ready', unlimited, async (_request, reply) => {
    const also = redis ? { redis: redis.up() } : {};
    if (draining.begun) return reply.code(503).send({ ready: false, ...LEAVING, ...also });
    try {
      await deps.ping();
      return { ready: true, protocol: PROTOCOL, ...also };
    } catch {
      return reply.code(503).send({ ready: false, ...AWAY, ...also });
    }
  });
}
