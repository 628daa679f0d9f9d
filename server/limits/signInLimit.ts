import type { FastifyInstance } from 'fastify';
import { trouble } from '../http/trouble.ts';
import { addressKey } from './addressKey.ts';
import type { Counts } from './counts.ts';

const WINDOW = 15 * 60;
/** Failures within the window. Chosen, not measured: a section that opens old links behind one address is well below. */
const FROM_ONE_ADDRESS = 40;
const OVERALL = 400;
/** While many fail everywhere, somebody tries from many addresses: each is given less. Nobody who has not failed is kept out. */
const WHILE_MANY_FAIL = 4;

const TOO_OFTEN = () => trouble(429, 'TOO_OFTEN', 'Signing in failed too often from where you are. Wait a quarter of an hour, then try again, or ask the librarian for a new link.');

/** Everything by which somebody signs in. */
const isSignIn = (url: string): boolean => /^\/api\/sign-in\b/.test(url);

/** Guessing at sign-ins: after some failures an address is not listened to for a while, whatever it brings. Over all servers. */
export function limitSignIns(app: FastifyInstance, counts: Counts): void {
  const key = (ip: string): string => `sign-in:${addressKey(ip)}`;

  app.addHook('onRequest', async (request) => {
    if (!isSignIn(request.url)) return;
    const [own, all] = await Promise.all([counts.read(key(request.ip), WINDOW), counts.read('sign-in', WINDOW)]);
    if (own.count >= (all.count >= OVERALL ? WHILE_MANY_FAIL : FROM_ONE_ADDRESS)) throw TOO_OFTEN();
  });
  app.addHook('onResponse', async (request, reply) => {
    const failed = reply.statusCode >= 400 && reply.statusCode < 500 && reply.statusCode !== 429;
    if (failed && isSignIn(request.url)) await Promise.all([counts.add(key(request.ip), WINDOW), counts.add('sign-in', WINDOW)]);
  });
}
