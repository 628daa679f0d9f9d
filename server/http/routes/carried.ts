import type { FastifyInstance, FastifyRequest } from 'fastify';
import { z } from 'zod';
import { type CarriedView, SettleBody } from '../../../core/agreement/wire/http.ts';
import { leads } from '../../../core/agreement/seating.ts';
import type { Deps } from '../deps.ts';
import { idOf, read } from '../input.ts';
import { signedIn } from '../session.ts';
import { notFound, trouble, TroubleAnswer } from '../trouble.ts';

const Revision = z.object({ revision: z.coerce.number().int().positive().optional() });

/** What changed when a corrected edition was laid over a part, and the marks that did not go along. */
export function carriedRoutes(app: FastifyInstance, deps: Deps): void {
  async function twoEditions(request: FastifyRequest) {
    const { hall } = await signedIn(deps, request);
    const { library } = hall.store;
    const part = await library.part(idOf(request.params));
    const editions = part ? await library.earlier(part.id) : [];
    const { revision } = read(Revision, request.query);
    const earlier = editions.find((one) => revision === undefined || one.revision === revision);
    const older = part && earlier && (await library.earlierMusic(part.id, earlier.revision));
    if (!older) throw notFound('earlier edition of this part');
    return { hall, part, older, earlier, editions };
  }

  app.get('/api/parts/:id/carried', async (request): Promise<CarriedView> => {
    const { hall, part, older, earlier, editions } = await twoEditions(request);
    const current = await hall.authority.current(part.id);
    const places = await deps.documents.carriedPlaces(current!.state, older, part.content);
    // What was settled beside a later edition is settled beside an earlier one too.
    const settled = Object.assign({}, ...editions.toReversed().map((one) => one.settled)) as CarriedView['settled'];
    return { revision: earlier.revision, fileName: earlier.fileName, earlier: editions.map(({ revision, fileName }) => ({ revision, fileName })), places, settled };
  });

  app.get('/api/parts/:id/carried/engraving', async (request, reply) => {
    const { hall, older, earlier } = await twoEditions(request);
    const made = await deps.documents.engravingFor({ ...(await hall.store.library.source(earlier.edition))!, part: older.id, stored: older });
    if (!made.ok) throw new TroubleAnswer(422, made.trouble);
    return reply.type('application/vnd.recordare.musicxml+xml; charset=utf-8').send(made.text);
  });

  app.post('/api/parts/:id/carried', async (request): Promise<{ ok: true }> => {
    const { person, hall } = await signedIn(deps, request);
    const { library, sections } = hall.store;
    const part = idOf(request.params);
    const { revision, key, how } = read(SettleBody, request.body);
    const section = await sections.ofPart(part);
    if (!person.librarian && !leads(section, person.id)) throw trouble(403, 'NOT_YOUR_ROLE', 'Nothing was changed: this is for the principal and the librarian.');
    const settled = how && { how, by: person.id, name: person.name, at: deps.now().toISOString() };
    if (!(await library.settle(part, revision, key, settled))) throw notFound('earlier edition of this part');
    return { ok: true };
  });
}
