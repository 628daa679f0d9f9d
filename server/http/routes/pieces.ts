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
  const checks = createPieceChecks();

  async function asked(request: FastifyRequest) {
    const { person, hall } = await signedIn(deps, request);
    const work = await hall.store.library.work(idOf(request.params));
    if (!work) throw notFound('work');
    return { hall: { ...deps, ...hall }, work, person: person.id };
  }

  app.get('/api/works/:id/check', async (request): Promise<PieceCheck> => {
    const { hall, work, person } = await asked(request);
    return checks.view(hall, work, person);
  });

  app.post('/api/works/:id/check', async (request): Promise<PieceCheck> => {
    const { hall, work, person } = await asked(request);
    await checks.ask(hall, work, person);
    return checks.view(hall, work, person);
  });

  app.delete('/api/works/:id/check', async (request): Promise<PieceCheck> => {
    const { hall, work, person } = await asked(request);
    await checks.leave(hall, work.id, person);
    return checks.view(hall, work, person);
  });

  app.get('/api/works/:id/check/parts/:part', async (request): Promise<readonly PieceFinding[]> => {
    const { hall } = await signedIn(deps, request);
    const { id, part } = read(PartOf, request.params);
    const findings = await checks.findings({ ...deps, ...hall }, id, part);
    if (!findings) throw trouble(404, 'NOT_LOOKED_THROUGH', 'What was found here is not kept any more. Look through the whole piece again.');
    return findings;
  });
}
