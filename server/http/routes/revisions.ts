import type { FastifyInstance, FastifyRequest } from 'fastify';
import { z } from 'zod';
import { difference } from '../../../core/agreement/difference.ts';
import { inForce, type MarkInForce } from '../../../core/agreement/inForce.ts';
import { revisionsOf, stoodAt } from '../../../core/agreement/revisions.ts';
import type { AgreementState, PartFacts } from '../../../core/agreement/state.ts';
import type { DifferenceView, RevisionsView, RevisionView } from '../../../core/agreement/wire/revisions.ts';
import { wholeLog } from '../../archive/keepWork.ts';
import { partNow } from '../../operations/partNow.ts';
import { attachment } from '../attachment.ts';
import type { Deps } from '../deps.ts';
import { idOf, read } from '../input.ts';
import { erasuresAsCsv } from '../librarianTables.ts';
import { signedIn } from '../session.ts';
import { notFound } from '../trouble.ts';

const Seq = z.coerce.number().int().nonnegative().max(2 ** 31 - 1);
const At = z.object({ seq: Seq });
const Between = z.object({ from: Seq, to: Seq });

export function revisionRoutes(app: FastifyInstance, deps: Deps): void {
  async function partOf(request: FastifyRequest) {
    const { hall } = await signedIn(deps, request);
    const part = await hall.store.library.part(idOf(request.params));
    if (!part) throw notFound('part');
    return { store: hall.store, part, ...(await partNow(hall, part)) };
  }

  /** Ink alone tells what stood then; nothing of the log has to be read again. */
  const standing = (state: AgreementState, seq: number, facts: PartFacts): MarkInForce[] =>
    inForce(stoodAt(state, seq), facts.seats);

  app.get('/api/parts/:id/revisions', async (request): Promise<RevisionsView> => {
    const { store, part, state } = await partOf(request);
    return { head: state.seq, revisions: revisionsOf(await wholeLog(store, part.id, state.seq)) };
  });

  app.get('/api/parts/:id/revisions/:seq', async (request): Promise<RevisionView> => {
    const { state, facts } = await partOf(request);
    const { seq } = read(At, request.params);
    if (seq > state.seq) throw notFound('earlier state of this part');
    return { seq, marks: standing(state, seq, facts) };
  });

  app.get('/api/parts/:id/difference', async (request): Promise<DifferenceView> => {
    const { state, facts } = await partOf(request);
    const { from, to } = read(Between, request.query);
    if (Math.max(from, to) > state.seq) throw notFound('earlier state of this part');
    return { from, to, changes: difference(standing(state, from, facts), standing(state, to, facts), facts) };
  });

  app.get('/api/parts/:id/erasures', async (request, reply) => {
    const { store, part, state, facts } = await partOf(request);
    const name = `${part.work.title} - ${part.content.name} - to erase.csv`;
    return reply.type('text/csv; charset=utf-8').header('content-disposition', attachment(name)).send(erasuresAsCsv(state, facts, part.content, revisionsOf(await wholeLog(store, part.id, state.seq))));
  });
}
