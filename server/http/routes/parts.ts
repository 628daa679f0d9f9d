import type { FastifyInstance } from 'fastify';
import { z } from 'zod';
import { placeIn } from '../../../core/agreement/seating.ts';
import type { LogView, PartView } from '../../../core/agreement/wire/http.ts';
import type { SinceView } from '../../../core/agreement/wire/overview.ts';
import { sinceOf } from '../../waiting/overviewOf.ts';
import { rolesOf } from '../../store/rolesOf.ts';
import type { Hall } from '../../halls.ts';
import type { Store } from '../../store/store.ts';
import type { StoredPart } from '../../store/library.ts';
import { attachment } from '../attachment.ts';
import type { Deps } from '../deps.ts';
import { idOf, read } from '../input.ts';
import { tellsHandedOut } from '../handedOut.ts';
import { recent } from '../recent.ts';
import { signedIn } from '../session.ts';
import { notFound, TroubleAnswer } from '../trouble.ts';

const After = z.object({ after: z.coerce.number().int().nonnegative().max(2 ** 31 - 1).default(0) });
const ROWS_AT_ONCE = 500;
/** Engraver's texts kept ready; one is up to some megabytes. Chosen, not measured. */
const TEXTS_KEPT = 12;

export function partRoutes(app: FastifyInstance, deps: Deps): void {
  const engraving = recent(TEXTS_KEPT, async (_key: string, { library }: Store, part: StoredPart) => {
    const source = (await library.source(part.edition))!;
    return deps.documents.engravingFor({ ...source, part: part.content.id, stored: part.content });
  });

  async function partOf(hall: Hall, params: unknown): Promise<StoredPart> {
    const part = await hall.store.library.part(idOf(params));
    if (!part) throw notFound('part');
    return part;
  }

  app.get('/api/parts/:id', async (request): Promise<PartView> => {
    const { person, hall } = await signedIn(deps, request);
    const part = await partOf(hall, request.params);
    const [current, section, seen] = await Promise.all([hall.authority.current(part.id), hall.store.sections.ofPart(part.id), hall.store.attention.seen(person.id)]);
    const mine = section && placeIn(section, person.id);
    const roles = rolesOf(person.librarian, mine?.principal ?? null);
    return { id: part.id, work: part.work, part: part.content, section, roles, seat: mine?.seat ?? null, seen: seen.get(part.id) ?? 0, state: current!.state, head: current!.place.head };
  });

  app.get('/api/parts/:id/since', async (request): Promise<SinceView> => {
    const { hall } = await signedIn(deps, request);
    return sinceOf(hall, await partOf(hall, request.params));
  });

  app.get('/api/parts/:id/log', async (request): Promise<LogView> => {
    const { hall } = await signedIn(deps, request);
    const { after } = read(After, request.query);
    const view = await hall.store.log.entries(idOf(request.params), after, ROWS_AT_ONCE);
    if (!view) throw notFound('part');
    return view;
  });

  app.get('/api/parts/:id/engraving', async (request, reply) => {
    const { hall } = await signedIn(deps, request);
    const part = await partOf(hall, request.params);
    const tag = `"${part.edition}-${part.id}-${part.revision}"`;
    reply.header('etag', tag).header('cache-control', 'private, no-cache');
    if (request.headers['if-none-match'] === tag) return reply.code(304).send();
    const made = await engraving(tag, hall.store, part);
    if (!made.ok) throw new TroubleAnswer(422, made.trouble);
    return reply.type('application/vnd.recordare.musicxml+xml; charset=utf-8').send(made.text);
  });

  app.get('/api/parts/:id/source', async (request, reply) => {
    const { person, hall } = await signedIn(deps, request);
    const part = await partOf(hall, request.params);
    const { edition } = part;
    await tellsHandedOut(hall.store.trail, person)(part, 'source', 'section');
    const { bytes, fileName } = (await hall.store.library.source(edition))!;
    return reply.type('application/octet-stream').header('content-disposition', attachment(fileName)).send(Buffer.from(bytes));
  });
}
