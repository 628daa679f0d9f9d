import cookie from '@fastify/cookie';
import multipart from '@fastify/multipart';
import fastify, { type FastifyInstance } from 'fastify';
import { serveClient } from './http/clientFiles.ts';
import type { Deps } from './http/deps.ts';
import { answerErrors } from './http/errors.ts';
import { guard } from './http/guards.ts';
import { archiveRoutes } from './http/routes/archive.ts';
import { attentionRoutes } from './http/routes/attention.ts';
import { errataRoutes } from './http/routes/errata.ts';
import { exportRoutes } from './http/routes/exports.ts';
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
import { workRoutes } from './http/routes/works.ts';
import { LARGEST_UPLOAD, MOST_FILES } from './http/upload.ts';
import { attachSocket, type SocketOptions } from './socket/attach.ts';

const ROUTES = [healthRoutes, signInRoutes, handRoutes, attentionRoutes, shelfRoutes, programmeRoutes, workRoutes, partRoutes, carriedRoutes, pieceRoutes, operationRoutes, exportRoutes, printRoutes, peopleRoutes, sectionRoutes, revisionRoutes, archiveRoutes, errataRoutes];

/** The whole app with both faces; it listens when the caller says so. */
export async function buildApp(deps: Deps, socket: SocketOptions = {}): Promise<FastifyInstance> {
  const app = fastify({ bodyLimit: 1024 * 1024, forceCloseConnections: true });
  answerErrors(app, deps);
  await app.register(cookie);
  await guard(app, deps);
  await app.register(multipart, { limits: { fileSize: LARGEST_UPLOAD, files: MOST_FILES, fields: 4, parts: MOST_FILES + 4, headerPairs: 50 } });
  const unlisten = deps.queue.listen((news) => (news.what === 'renewed' ? deps.notices.renewed(news.parts) : undefined));
  app.addHook('onClose', async () => unlisten());
  for (const routes of ROUTES) routes(app, deps);
  await serveClient(app);
  attachSocket(app, deps, socket);
  return app;
}
