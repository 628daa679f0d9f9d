import type { FastifyInstance } from 'fastify';
import { type CarriedView, SettleBody } from '../../../core/agreement/wire/http.ts';
import type { EarlierMusic, StoredPart } from '../../store/library.ts';
import type { Deps } from '../deps.ts';
import { idOf, read } from '../input.ts';
import { signedIn } from '../session.ts';
import { notFound, trouble, TroubleAnswer } from '../trouble.ts';

/** What changed when a corrected edition was laid over a part, and the marks that did not go along. */
export function carriedRoutes(app: FastifyInstance, deps: Deps): void {
  const { library, people } = deps.store;

  async function twoEditions(params: unknown): Promise<{ part: StoredPart; earlier: EarlierMusic }> {
    const part = await library.part(idOf(params));
    const earlier = part && (await library.earlier(part.id));
    if (!earlier) throw notFound('earlier edition of this part');
    return { part, earlier };
  }

  app.get('/api/parts/:id/carried', async (request): Promise<CarriedView> => {
    await signedIn(deps, request);
    const { part, earlier } = await twoEditions(request.params);
    const [current, source] = await Promise.all([deps.authority.current(part.id), library.source(earlier.edition)]);
    const places = await deps.documents.carriedPlaces(current!.state, earlier.content, part.content);
    return { revision: earlier.revision, fileName: source!.fileName, places, settled: earlier.settled };
  });

  app.get('/api/parts/:id/carried/engraving', async (request, reply) => {
    await signedIn(deps, request);
    const { earlier } = await twoEditions(request.params);
    const source = (await library.source(earlier.edition))!;
    const made = await deps.documents.engravingFor({ ...source, part: earlier.content.id, stored: earlier.content });
    if (!made.ok) throw new TroubleAnswer(422, made.trouble);
    return reply.type('application/vnd.recordare.musicxml+xml; charset=utf-8').send(made.text);
  });

  app.post('/api/parts/:id/carried', async (request): Promise<{ ok: true }> => {
    const { person } = await signedIn(deps, request);
    const { part } = await twoEditions(request.params);
    const { revision, key, how } = read(SettleBody, request.body);
    const leads = (await people.memberships(person.id)).some(({ section, role }) => section === part.section && role === 'principal');
    if (!person.librarian && !leads) throw trouble(403, 'NOT_YOUR_ROLE', 'Nothing was changed: this is for the principal and the librarian.');
    const settled = how && { how, by: person.id, name: person.name, at: deps.now().toISOString() };
    if (!(await library.settle(part.id, revision, key, settled))) throw notFound('earlier edition of this part');
    return { ok: true };
  });
}
