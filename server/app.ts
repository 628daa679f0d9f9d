import { randomBytes } from 'node:crypto';
import cookie from '@fastify/cookie';
import multipart from '@fastify/multipart';
import fastify, { type FastifyInstance } from 'fastify';
import { serveClient } from './http/clientFiles.ts';
import type { Deps } from './http/deps.ts';
import { answerBadAddress, answerErrors } from './http/errors.ts';
import { guard } from './http/guards.ts';
import { readJson } from './http/input.ts';
import { PATIENCE, waitForBodies } from './http/patience.ts';
import { archiveRoutes } from './http/routes/archive.ts';
import { attentionRoutes } from './http/routes/attention.ts';
import { errataRoutes } from './http/routes/errata.ts';
import { exportRoutes } from './http/routes/exports.ts';
import { identityRoutes } from './http/routes/identity.ts';
import { mySignInRoutes } from './http/routes/mySignIn.ts';
import { healthRoutes } from './http/routes/health.ts';
import { operationRoutes } from './http/routes/operations.ts';
import { carriedRoutes } from './http/routes/carried.ts';
import { partRoutes } from './http/routes/parts.ts';
import { handRoutes } from './http/routes/hand.ts';
import { pieceRoutes } from './http/routes/pieces.ts';
import { peopleRoutes } from './http/routes/people.ts';
import { printRoutes } from './http/routes/prints.ts';
import { revisionRoutes } from './http/routes/revisions.ts';
import { sectionRoutes } from './http/routes/sections.ts';
import { programmeRoutes } from './http/routes/programmes.ts';
import { shelfRoutes } from './http/routes/shelf.ts';
import { signInRoutes } from './http/routes/signIn.ts';
import { mineRoutes } from './http/routes/mine.ts';
import { trailRoutes } from './http/routes/trail.ts';
import { workRoutes } from './http/routes/works.ts';
import { createCounts, type Counts } from './limits/counts.ts';
import { createPersonLimit } from './limits/personLimit.ts';
import { LARGEST_UPLOAD, MOST_FILES } from './http/upload.ts';
import { countRequests, createDraining, type Draining } from './http/draining.ts';
import { attachSocket, type SocketOptions } from './socket/attach.ts';

const ROUTES = [signInRoutes, identityRoutes, mySignInRoutes, handRoutes, attentionRoutes, shelfRoutes, programmeRoutes, workRoutes, partRoutes, carriedRoutes, pieceRoutes, operationRoutes, exportRoutes, printRoutes, peopleRoutes, sectionRoutes, revisionRoutes, archiveRoutes, errataRoutes, trailRoutes, mineRoutes];

/** Marks are sent one by one over the live line. Chosen, not measured. */
const MESSAGES_A_REQUEST = 2;

/** What concerns one process among several; each may be left out where one process does it all. */
export interface ProcessOptions extends SocketOptions {
  draining?: Draining;
  redis?: { up(): boolean } | null;
  /** Changes that the database lacks for this program. */
  lacks?: () => Promise<string[]>;
  /** Shared by all servers of the library, where there are several. */
  counts?: Counts;
  /** Addresses and networks whose word about a reader's address is taken. */
  proxies?: string[];
  /** Asked to look on at every request. */
  watch?: (app: FastifyInstance) => void;
}

/** The whole app with both faces; it listens when the caller says so. */
export async function buildApp(deps: Deps, { draining = createDraining(), redis = null, lacks = async () => [], counts = createCounts(null), proxies = [], watch = () => {}, ...socket }: ProcessOptions = {}): Promise<FastifyInstance> {
  const app = fastify({ bodyLimit: 1024 * 1024, forceCloseConnections: true, ...PATIENCE, frameworkErrors: answerBadAddress, genReqId: () => randomBytes(9).toString('base64url'), trustProxy: proxies.length ? proxies : false });
  watch(app);
  countRequests(app, draining);
  answerErrors(app, deps);
  waitForBodies(app);
  readJson(app);
  await app.register(cookie);
  await guard(app, deps, counts);
  await app.register(multipart, { limits: { fileSize: LARGEST_UPLOAD, files: MOST_FILES, fields: 4, parts: MOST_FILES + 4, headerPairs: 50 } });
  const unlisten = deps.queue.listen((news) => (news.what === 'renewed' ? deps.notices.renewed(news.parts, true) : undefined));
  app.addHook('onClose', async () => unlisten());
  healthRoutes(app, deps, { draining, redis, lacks });
  for (const routes of ROUTES) routes(app, deps);
  await serveClient(app);
  attachSocket(app, deps, { draining, mayTalk: createPersonLimit(counts, MESSAGES_A_REQUEST * deps.requestsPerMinute), ...socket });
  return app;
}
