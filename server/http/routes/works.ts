import type { FastifyInstance, FastifyRequest } from 'fastify';
import type { ImportAnswer } from '../../../core/agreement/wire/http.ts';
import type { NewEdition } from '../../store/library.ts';
import type { Deps } from '../deps.ts';
import { idOf } from '../input.ts';
import { importEdition, importWork, type Laid } from '../layOnShelf.ts';
import { librarian } from '../session.ts';
import { notFound, TroubleAnswer } from '../trouble.ts';
import { LARGEST_UPLOAD, uploaded } from '../upload.ts';

export function workRoutes(app: FastifyInstance, deps: Deps): void {
  const limits = { bodyLimit: LARGEST_UPLOAD + 1024 * 1024, config: { rateLimit: { max: Math.min(60, deps.requestsPerMinute) } } };

  async function edition(request: FastifyRequest): Promise<NewEdition> {
    const { person } = await librarian(deps, request);
    return { ...(await uploaded(request)), by: person.id, at: deps.now() };
  }

  function answer(laid: Laid, what: string): ImportAnswer {
    if (laid.ok) {
      deps.notices.renewed(laid.parts);
      return laid.answer;
    }
    throw 'missing' in laid ? notFound(what) : new TroubleAnswer(422, laid.trouble);
  }

  app.post('/api/programmes/:id/works', limits, async (request) => answer(await importWork(deps, idOf(request.params), await edition(request)), 'programme'));
  app.post('/api/works/:id/editions', limits, async (request) => answer(await importEdition(deps, idOf(request.params), await edition(request)), 'work'));
}
