import type { FastifyInstance, FastifyReply, FastifyRequest } from 'fastify';
import type { ImportAnswer } from '../../../core/agreement/wire/http.ts';
import type { ImportView } from '../../../core/agreement/wire/imports.ts';
import { type Asked, createImports } from '../../imports/imports.ts';
import type { Deps, InHall } from '../deps.ts';
import { idOf } from '../input.ts';
import { librarian } from '../session.ts';
import { notFound, trouble, TroubleAnswer } from '../trouble.ts';
import { LARGEST_UPLOAD, MOST_FILES, uploadedFiles } from '../upload.ts';

/** A librarian who unpacks a season sends hundreds. Chosen, not measured. */
const UPLOADS_PER_MINUTE = 600;

/** Scores come in, in the background; whoever does not ask for that (RFC 7240) waits for the end of it. */
export function workRoutes(app: FastifyInstance, deps: Deps): void {
  const imports = createImports();
  const limits = { bodyLimit: LARGEST_UPLOAD + 1024 * 1024, config: { rateLimit: { max: Math.min(UPLOADS_PER_MINUTE, deps.requestsPerMinute) } } };

  async function taken(request: FastifyRequest, reply: FastifyReply, kind: Asked['kind'], most: number): Promise<ImportAnswer | ImportView> {
    const { person, hall } = await librarian(deps, request);
    const target = idOf(request.params);
    const { jobs } = hall.store;
    const files = await uploadedFiles(request, jobs);
    if (files.length > most) {
      await jobs.dropUploads(files);
      throw trouble(400, 'ONE_FILE', 'Nothing was changed: a corrected score is laid over the work one file at a time. Send them one by one.');
    }
    const view = await imports.ask({ ...deps, ...hall }, { kind, target, files, by: person.id });
    if (/\brespond-async\b/i.test(String(request.headers.prefer ?? ''))) return reply.code(202).header('location', `/api/imports/${view.id}`).send(view);
    const outcome = await imports.outcome({ ...deps, ...hall }, view.id);
    if (!outcome.ok) throw new TroubleAnswer(outcome.status, outcome.trouble);
    return outcome.answer;
  }

  app.post('/api/programmes/:id/works', limits, (request, reply) => taken(request, reply, 'work', MOST_FILES));
  app.post('/api/works/:id/editions', limits, (request, reply) => taken(request, reply, 'edition', 1));
  app.post('/api/works/:id/files', limits, (request, reply) => taken(request, reply, 'parts', MOST_FILES));

  /** Whoever looks after the imports, and where. */
  async function looking(request: FastifyRequest): Promise<InHall> {
    return { ...deps, ...(await librarian(deps, request)).hall };
  }

  app.get('/api/imports', async (request): Promise<ImportView[]> => imports.views(await looking(request)));

  app.get('/api/imports/:id', async (request): Promise<ImportView> => {
    const view = await imports.view(await looking(request), idOf(request.params));
    if (!view) throw notFound('import');
    return view;
  });

  app.delete('/api/imports/:id', async (request): Promise<ImportView[]> => {
    const hall = await looking(request);
    if (!(await imports.leave(hall, idOf(request.params)))) throw notFound('import');
    return imports.views(hall);
  });
}
