import type { FastifyInstance } from 'fastify';
import { PROTOCOL } from '../../../core/agreement/wire/socket.ts';
import { describe } from '../describe.ts';
import type { Deps } from '../deps.ts';
import { AWAY } from '../errors.ts';
import type { Draining } from '../draining.ts';

const LEAVING = { code: 'LEAVING', text: 'This server is about to stop and takes nobody in any more. Ask again: another one answers.' };

const OLD_SHELVES = { code: 'OLD_SHELVES', text: 'The database is older than this server: changes that it counts on are not in it. Start the server anew; it makes them as it starts.' };

export function healthRoutes(app: FastifyInstance, deps: Deps, { draining, redis, lacks }: { draining: Draining; redis: { up(): boolean } | null; lacks: () => Promise<string[]> }): void {
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
      const [missing] = await Promise.all([lacks(), deps.ping()]);
      if (missing.length) return reply.code(503).send({ ready: false, ...OLD_SHELVES, ...also });
      return { ready: true, protocol: PROTOCOL, ...also };
    } catch {
      return reply.code(503).send({ ready: false, ...AWAY, ...also });
    }
  });
}
