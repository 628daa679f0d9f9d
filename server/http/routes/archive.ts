import type { FastifyInstance } from 'fastify';
import { randomUUID } from 'node:crypto';
import type { KeptSetView } from '../../../core/archive/keptSet.ts';
import { BringInBody, KeepBody, TravelBody, type BroughtIn, type OfferView, type TakenIn, type TravelView } from '../../../core/archive/wire.ts';
import { z } from 'zod';
import { archiveSchema, writeArchive } from '../../archive/archiveZip.ts';
import { bringIn } from '../../archive/bringIn.ts';
import { keptWork } from '../../archive/keepWork.ts';
import { offersFor } from '../../archive/offers.ts';
import { readArchive } from '../../archive/readArchive.ts';
import { sendBows, travelView } from '../../archive/travelling.ts';
import { attachment } from '../attachment.ts';
import type { Deps } from '../deps.ts';
import { idOf, read } from '../input.ts';
import { librarian, signedIn } from '../session.ts';
import { notFound, trouble } from '../trouble.ts';
import { uploaded } from '../upload.ts';

/** An archive is many scores. Chosen, not measured. */
const LARGEST_ARCHIVE = 500 * 1024 * 1024;
const From = z.object({ from: z.string().max(64) });

export function archiveRoutes(app: FastifyInstance, deps: Deps): void {
  const schema = archiveSchema();

  app.get('/api/archive.schema.json', async (_request, reply) => reply.type('application/schema+json').send(JSON.stringify(schema)));

  app.get('/api/archive', async (request): Promise<KeptSetView[]> => {
    return (await signedIn(deps, request)).hall.store.archive.sets();
  });

  app.get('/api/archive/export', async (request, reply) => {
    const { person, hall } = await librarian(deps, request);
    await hall.store.trail.tell({ kind: 'handedOut', facts: { what: 'archive' } }, person);
    return reply.type('application/zip').header('content-disposition', attachment('archive.zip')).send(await writeArchive({ ...deps, ...hall }));
  });

  app.post('/api/archive', { bodyLimit: LARGEST_ARCHIVE + 1024 * 1024 }, async (request): Promise<TakenIn> => {
    const { person, hall } = await librarian(deps, request);
    const { bytes } = await uploaded(request, LARGEST_ARCHIVE);
    const sets = await readArchive(deps.documents, Buffer.from(bytes));
    const added = await hall.store.archive.keep(sets, person, 'archiveTakenIn');
    return { added: added.length, known: sets.length - added.length };
  });

  app.post('/api/works/:id/keep', async (request): Promise<KeptSetView[]> => {
    const { person, hall } = await librarian(deps, request);
    const { archive } = hall.store;
    const under = read(KeepBody, request.body);
    const set = await keptWork(hall.store, idOf(request.params), under, { id: randomUUID(), by: person.name, at: deps.now() });
    if (!set) throw trouble(409, 'NOTHING_INKED', 'Nothing was put by: nothing is inked in on this work yet. Do it again when the section has decided something.');
    await archive.keep([set], person);
    return archive.sets();
  });

  app.get('/api/works/:id/offers', async (request): Promise<OfferView[]> => {
    const { hall } = await signedIn(deps, request);
    const offers = await offersFor(hall.store, idOf(request.params));
    if (!offers) throw notFound('work');
    return offers;
  });

  app.post('/api/works/:id/bring-in', async (request): Promise<BroughtIn> => {
    const { person, id: session, hall } = await signedIn(deps, request);
    const { id, set: wanted, ink } = read(BringInBody, request.body);
    const set = await hall.store.archive.set(wanted);
    if (!set) throw notFound('set of marks');
    return bringIn({ ...deps, ...hall }, { set, work: idOf(request.params), ink, asking: id, asker: { person: person.id, session }, librarian: person.librarian });
  });

  app.get('/api/works/:id/travel', async (request): Promise<TravelView> => {
    const { hall } = await signedIn(deps, request);
    const view = await travelView(hall, idOf(request.params), read(From, request.query).from);
    if (!view) throw notFound('part');
    return view;
  });

  app.post('/api/works/:id/travel', async (request): Promise<BroughtIn> => {
    const { person, id: session, hall } = await signedIn(deps, request);
    const { id, from, keys } = read(TravelBody, request.body);
    const brought = await sendBows({ ...deps, ...hall }, idOf(request.params), { from, keys, asking: id, asker: { person: person.id, session } });
    if (!brought) throw notFound('part');
    return brought;
  });
}
