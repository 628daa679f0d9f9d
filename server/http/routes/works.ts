import type { FastifyInstance, FastifyReply, FastifyRequest } from 'fastify';
import type { ImportAnswer } from '../../../core/agreement/wire/http.ts';
import type { ImportView } from '../../../core/agreement/wire/imports.ts';
import { createImports, type ImportOrder } from '../../imports/imports.ts';
import type { Deps } from '../deps.ts';
import { idOf } from '../input.ts';
import { librarian } from '../session.ts';
import { notFound, trouble, TroubleAnswer } from '../trouble.ts';
import { LARGEST_UPLOAD, MOST_FILES, uploadedFiles } from '../upload.ts';

/** A librarian who unpacks a season sends hundreds. Chosen, not measured. */
const UPLOADS_PER_MINUTE = 600;

/** Scores come in, in the background; whoever does not ask for that (RFC 7240) waits for the end of it. */
export function workRoutes(app: FastifyInstance, deps: Deps): void {
  const imports = createImports(deps);
  app.addHook('onClose', () => imports.close());
  const limits = { bodyLimit: LARGEST_UPLOAD + 1024 * 1024, config: { rateLimit: { max: Math.min(UPLOADS_PER_MINUTE, deps.requestsPerMinute) } } };

  async function taken(request: FastifyRequest, reply: FastifyReply, kind: ImportOrder['kind'], most: number): Promise<ImportAnswer | ImportView> {
    const { person, hall } = await librarian(deps, request);
    const target = idOf(request.params);
    const files = await uploadedFiles(request, imports.spool);
    if (files.length > most) {
      await imports.spool.drop(files);
      throw trouble(400, 'ONE_FILE', 'Nothing was changed: a corrected score is laid over the work one file at a time. Send them one by one.');
    }
    const { view, ended } = imports.ask({ kind, target, files, by: person.id, hall });
    if (/\brespond-async\b/i.test(String(request.headers.prefer ?? ''))) return reply.code(202).header('location', `/api/imports/${view.id}`).send(view);
    const outcome = await ended;
    imports.leave(hall.ensemble, view.id);
    if (!outcome.ok) throw new TroubleAnswer(outcome.status, outcome.trouble);
    return outcome.answer;
  }

  app.post('/api/programmes/:id/works', limits, (request, reply) => taken(request, reply, 'work', MOST_FILES));
  app.post('/api/works/:id/editions', limits, (request, reply) => taken(request, reply, 'edition', 1));
  app.post('/api/works/:id/files', limits, (request, reply) => taken(request, reply, 'parts', MOST_FILES));

  app.get('/api/imports', async (request): Promise<ImportView[]> => {
    return imports.views((await librarian(deps, request)).hall.ensemble);
  });

  app.get('/api/imports/:id', async (request): Promise<ImportView> => {
    const { hall } = await librarian(deps, request);
    const view = imports.view(hall.ensemble, idOf(request.params));
    if (!view) throw notFound('import');
    return view;
  });

  app.delete('/api/imports/:id', async (request): Promise<ImportView[]> => {
    const { hall } = await librarian(deps, request);
    if (!imports.leave(hall.ensemble, idOf(request.params))) throw notFound('import');
    return imports.views(hall.ensemble);
  });
}
