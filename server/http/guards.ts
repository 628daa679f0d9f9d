import helmet from '@fastify/helmet';
import rateLimit from '@fastify/rate-limit';
import underPressure from '@fastify/under-pressure';
import type { FastifyInstance } from 'fastify';
import type { Deps } from './deps.ts';
import { isForeign } from './origin.ts';
import { cookieName } from './session.ts';
import { trouble } from './trouble.ts';

const BUSY = trouble(503, 'BUSY', 'The library has its hands full. Wait a moment, then do it again.');
const TOO_MANY = trouble(429, 'TOO_MUCH', 'That was too much at once. Wait a minute, then do it again.');
/** Above this the event loop is not keeping up. Chosen, not measured. */
const LONGEST_DELAY = 3000;

/** What stands before every route: headers, foreign pages, floods, overload. */
export async function guard(app: FastifyInstance, deps: Deps): Promise<void> {
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
  await app.register(rateLimit, {
    max: deps.requestsPerMinute,
    timeWindow: '1 minute',
    keyGenerator: (request) => request.cookies[cookieName(deps.origin)] ?? request.ip,
    errorResponseBuilder: () => TOO_MANY,
    allowList: (request) => !request.url.startsWith('/api/'),
  });
  await app.register(underPressure, {
    maxEventLoopDelay: LONGEST_DELAY,
    pressureHandler: (request) => {
      if (request.url.startsWith('/api/')) throw BUSY;
    },
  });
  app.addHook('onRequest', async (request) => {
    if (request.method !== 'GET' && request.method !== 'HEAD' && isForeign(request.headers, deps.origin)) {
      throw trouble(403, 'FOREIGN_PAGE', 'Nothing was changed: this came from a page of another site. Open the library at its own address.');
    }
  });
}
