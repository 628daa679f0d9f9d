import type { FastifyInstance } from 'fastify';
import type { Deps } from './deps.ts';
import { cookieName } from './session.ts';
import { trouble } from './trouble.ts';

/** A page asks for a handful of things at once, a browser for six on one line. Chosen, not measured. */
const AT_ONCE = 60;

/** However fast somebody may ask, others do not stand behind all of it: so many requests of one sign-in are looked at at once, and no more. */
export function fewAtOnce(app: FastifyInstance, deps: Deps): void {
  const asking = new Map<string, number>();
  app.addHook('onRequest', async (request, reply) => {
    if (!request.url.startsWith('/api/')) return;
    const who = request.cookies[cookieName(deps.origin)] ?? request.ip;
    const now = (asking.get(who) ?? 0) + 1;
    asking.set(who, now);
    reply.raw.once('close', () => {
      const left = asking.get(who)! - 1;
      if (left) asking.set(who, left);
      else asking.delete(who);
    });
    if (now > AT_ONCE) throw trouble(429, 'TOO_MUCH', 'That was too much at once. Wait a minute, then do it again.');
  });
}
