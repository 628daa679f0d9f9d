import type { FastifyInstance } from 'fastify';
import { z } from 'zod';
import { NewErratumBody, type ErratumView } from '../../../core/archive/erratum.ts';
import { attachment } from '../attachment.ts';
import type { Deps } from '../deps.ts';
import { idOf, printable, read } from '../input.ts';
import { errataAsCsv } from '../librarianTables.ts';
import { librarian, signedIn } from '../session.ts';
import { notFound, trouble } from '../trouble.ts';

const Body = NewErratumBody.refine(({ says, should }) => printable(says + should), { message: 'words are made of letters' });
const Form = z.object({ form: z.enum(['json', 'csv']).default('json') });
const Settled = z.strictObject({ settled: z.boolean() });

export function errataRoutes(app: FastifyInstance, deps: Deps): void {
  app.get('/api/works/:id/errata', async (request, reply) => {
    const { errata, library } = (await signedIn(deps, request)).hall.store;
    const work = await library.work(idOf(request.params));
    if (!work) throw notFound('work');
    const found = await errata.of(work.id);
    if (read(Form, request.query).form === 'json') return found;
    return reply.type('text/csv; charset=utf-8').header('content-disposition', attachment(`${work.title} - errata.csv`)).send(errataAsCsv(found));
  });

  app.post('/api/parts/:id/errata', async (request): Promise<ErratumView> => {
    const { person, hall } = await signedIn(deps, request);
    const { errata, library } = hall.store;
    const { measure, says, should } = read(Body, request.body);
    const part = await library.part(idOf(request.params));
    if (!part) throw notFound('part');
    const printed = part.content.measures[measure - 1];
    if (!printed) throw trouble(422, 'UNKNOWN_MEASURE', `Not written down: the part has no measure ${measure}. Point at one of its measures.`);
    const source = (await library.source(part.edition))!;
    return (await errata.add(part.work.id, { part: part.content.name, edition: source.fileName, measure, number: printed.number, says, should, by: person.name, at: deps.now().toISOString() }))!;
  });

  app.put('/api/errata/:id/settled', async (request) => {
    const { errata } = (await librarian(deps, request)).hall.store;
    const { settled } = read(Settled, request.body);
    if (!(await errata.settle(idOf(request.params), settled ? deps.now() : null))) throw notFound('wrong note');
    return { settled };
  });
}
