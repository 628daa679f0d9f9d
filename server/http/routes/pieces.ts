import type { FastifyInstance, FastifyRequest } from 'fastify';
import { z } from 'zod';
import type { PieceCheck, PieceFinding } from '../../../core/agreement/wire/piece.ts';
import { createPieceChecks } from '../../pieces/pieceChecks.ts';
import type { Deps } from '../deps.ts';
import { idOf, read } from '../input.ts';
import { signedIn } from '../session.ts';
import { notFound, trouble } from '../trouble.ts';

const PartOf = z.object({ id: z.string().max(64), part: z.string().max(64) });

/** Whole pieces looked through in the background, for whoever may read their parts. */
export function pieceRoutes(app: FastifyInstance, deps: Deps): void {
  const checks = createPieceChecks(deps);
  app.addHook('onClose', () => checks.close());

  async function asked(request: FastifyRequest) {
    const { person, hall } = await signedIn(deps, request);
    const work = await hall.store.library.work(idOf(request.params));
    if (!work) throw notFound('work');
    return { hall, work, person: person.id };
  }

  app.get('/api/works/:id/check', async (request): Promise<PieceCheck> => {
    const { hall, work, person } = await asked(request);
    return checks.view(hall, work.id, person);
  });

  app.post('/api/works/:id/check', async (request): Promise<PieceCheck> => {
    const { hall, work, person } = await asked(request);
    checks.ask(hall, work, person);
    return checks.view(hall, work.id, person);
  });

  app.delete('/api/works/:id/check', async (request): Promise<PieceCheck> => {
    const { hall, work, person } = await asked(request);
    checks.leave(work.id, person);
    return checks.view(hall, work.id, person);
  });

  app.get('/api/works/:id/check/parts/:part', async (request): Promise<readonly PieceFinding[]> => {
    await signedIn(deps, request);
    const { id, part } = read(PartOf, request.params);
    const findings = checks.findings(id, part);
    if (!findings) throw trouble(404, 'NOT_LOOKED_THROUGH', 'What was found here is not kept any more. Look through the whole piece again.');
    return findings;
  });
}
