import type { FastifyInstance } from 'fastify';
import { PROTOCOL } from '../../../core/agreement/wire/socket.ts';
import { describe } from '../describe.ts';
import type { Deps } from '../deps.ts';
import { AWAY } from '../errors.ts';

export function healthRoutes(app: FastifyInstance, deps: Deps): void {
  const description = describe();
  app.get('/api/openapi.json', async () => description);

  app.get('/api/health', { config: { rateLimit: false } }, async (_request, reply) => {
    try {
      await deps.ping();
      return { well: true, protocol: PROTOCOL };
    } catch {
      return reply.code(503).send({ well: false, ...AWAY });
    }
  });
}
