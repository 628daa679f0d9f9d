import type { FastifyInstance } from 'fastify';
import type { Measures } from './measures.ts';
import type { Daybook } from './daybook.ts';

/** Asked every second by the proxy, and of no interest afterwards. */
const UNTOLD = new Set(['/api/health', '/api/ready']);

/** Counts and records requests by the pattern of their route: an address itself may hold a token. */
export function watchRequests(app: FastifyInstance, measures: Measures, daybook: Daybook): void {
  app.addHook('onRequest', async (request, reply) => void reply.header('x-request-id', request.id));
  app.addHook('onResponse', async (request, reply) => {
    const route = request.routeOptions.url ?? 'none';
    const { method } = request;
    const { statusCode: status, elapsedTime } = reply;
    measures.request(method, route, status, elapsedTime / 1000);
    if (!route.startsWith('/api/') || UNTOLD.has(route)) return;
    daybook.event('request', { request: request.id, method, route, status, ms: Math.round(elapsedTime), ...operationOf(request.body) });
  });
}

/** Joins a request with the operation that it asked for. */
function operationOf(body: unknown): { operation?: string } {
  const operation = typeof body === 'object' && body !== null && 'operation' in body ? body.operation : undefined;
  return typeof operation === 'string' && /^[0-9a-f-]{36}$/.test(operation) ? { operation } : {};
}
