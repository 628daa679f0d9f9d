import helmet from '@fastify/helmet';
import rateLimit from '@fastify/rate-limit';
import underPressure from '@fastify/under-pressure';
import type { FastifyInstance, FastifyRequest } from 'fastify';
import { addressKey } from '../limits/addressKey.ts';
import type { Counts } from '../limits/counts.ts';
import { requestCounts } from '../limits/requestCounts.ts';
import { limitSignIns } from '../limits/signInLimit.ts';
import type { Deps } from './deps.ts';
import { isForeign } from './origin.ts';
import { cookieName } from './session.ts';
import { hashOf } from './tokens.ts';
import { trouble } from './trouble.ts';

const BUSY = trouble(503, 'BUSY', 'The library has its hands full. Wait a moment, then do it again.');
const TOO_MANY = trouble(429, 'TOO_MUCH', 'That was too much at once. Wait a minute, then do it again.');
/** Above this the event loop is not keeping up. Chosen, not measured. */
const LONGEST_DELAY = 3000;
const ASKED_BY_KEEPERS = new Set(['/api/health', '/api/ready']);
const MINUTE = 60;
/** Several people sit behind one address. Chosen, not measured. */
const SIGN_INS_AN_ADDRESS = 4;

/** What stands before every route: headers, foreign pages, floods, overload. */
export async function guard(app: FastifyInstance, deps: Deps, counts: Counts): Promise<void> {
  const https = deps.origin?.startsWith('https:') ?? false;
  await app.register(helmet, {
    contentSecurityPolicy: {
      useDefaults: false,
      directives: {
        defaultSrc: ["'self'"],
        // The engraver is WebAssembly; its worker is one of our own files.
        scriptSrc: ["'self'", "'wasm-unsafe-eval'"],
        workerSrc: ["'self'", 'blob:'],
        // Engraved pages carry their own style elements.
        styleSrc: ["'self'", "'unsafe-inline'"],
        imgSrc: ["'self'", 'data:', 'blob:'],
        fontSrc: ["'self'", 'data:'],
        connectSrc: ["'self'", 'data:', 'blob:'],
        objectSrc: ["'none'"],
        baseUri: ["'none'"],
        formAction: ["'self'"],
        frameAncestors: ["'none'"],
      },
    },
    // Over plain http a browser ignores these and says so in its console.
    crossOriginOpenerPolicy: https,
    originAgentCluster: https,
    strictTransportSecurity: https,
  });
  const broughtToken = (request: FastifyRequest): string | undefined => request.cookies[cookieName(deps.origin)];
  await app.register(rateLimit, {
    max: (request) => (broughtToken(request) ? SIGN_INS_AN_ADDRESS : 1) * deps.requestsPerMinute,
    timeWindow: MINUTE * 1000,
    // By address whatever cookie is brought: one that is made up for each request would never be counted twice.
    keyGenerator: (request) => `${addressKey(request.ip)}${broughtToken(request) ? ' signed in' : ''}`,
    store: requestCounts(counts),
    errorResponseBuilder: () => TOO_MANY,
    allowList: (request) => !request.url.startsWith('/api/'),
  });
  app.addHook('onRequest', async (request) => {
    const token = broughtToken(request);
    if (!token || !request.url.startsWith('/api/')) return;
    const { count } = await counts.add(`sign-in-of:${Buffer.from(hashOf(token)).toString('base64url')}`, MINUTE);
    if (count > deps.requestsPerMinute) throw TOO_MANY;
  });
  limitSignIns(app, counts);
  await app.register(underPressure, {
    maxEventLoopDelay: LONGEST_DELAY,
    pressureHandler: (request) => {
      // A busy server is not helped by being taken for a dead one.
      if (request.url.startsWith('/api/') && !ASKED_BY_KEEPERS.has(request.url)) throw BUSY;
    },
  });
  app.addHook('onRequest', async (request) => {
    if (request.method !== 'GET' && request.method !== 'HEAD' && isForeign(request.headers, deps.origin)) {
      throw trouble(403, 'FOREIGN_PAGE', 'Nothing was changed: this came from a page of another site. Open the library at its own address.');
    }
  });
}
