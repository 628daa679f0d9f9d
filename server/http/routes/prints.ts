import { Readable } from 'node:stream';
import type { FastifyInstance, FastifyReply } from 'fastify';
import type { Person } from '../../store/people.ts';
import { attachment } from '../attachment.ts';
import type { Deps, InHall } from '../deps.ts';
import { idOf, read } from '../input.ts';
import { tellsHandedOut } from '../handedOut.ts';
import { markedPart } from '../markedPart.ts';
import { PrintAsked, PrintsAsked, seatIn } from '../prints/copyOf.ts';
import { FORMS } from '../prints/forms.ts';
import { packCopies } from '../prints/packCopies.ts';
import type { PrintOrder } from '../prints/printJob.ts';
import { type Copy, copyThere } from '../prints/waitedFor.ts';
import { whenEnded } from '../../queue/whenEnded.ts';
import { signedIn } from '../session.ts';
import { notFound, trouble, TroubleAnswer } from '../trouble.ts';

/** Parts as pages, one print at a time for each person, made by whichever worker is free; what nobody waits for any more is stopped. */
export function printRoutes(app: FastifyInstance, deps: Deps): void {
  /** Asks for a print on behalf of somebody who has no other, until it is fetched or its asker goes away. */
  async function asked(hall: InHall, reply: FastifyReply, person: Person, target: string, order: PrintOrder) {
    const { jobs } = hall.store;
    const progress = { made: 0, of: order.copies.length };
    const job = await jobs.add({ kind: 'print', target, order, progress, by: person.id, alone: `print ${person.id}`, uploads: [], at: hall.now() });
    if (!job) throw trouble(429, 'PRINTING', 'Your last print is still being made. Wait until it is there, then ask for the next.');
    const gone = new AbortController();
    const away = () => gone.abort(new Error('Nobody waits for this print any more.'));
    reply.raw.once('close', away);
    const leave = (): void => {
      reply.raw.off('close', away);
      const over = gone.signal.aborted ? jobs.stop(job.id) : Promise.resolve();
      over.then(() => jobs.forget(job.id)).catch((reason: unknown) => deps.log(`Print ${job.id} was not put away.`, reason));
    };
    return { print: job.id, signal: gone.signal, leave };
  }

  async function* copiesOf(hall: InHall, print: string, count: number, signal: AbortSignal): AsyncIterable<Copy> {
    for (let place = 0; place < count; place++) yield copyThere(hall, print, place, signal);
    // The next may be asked for when this has come to its end.
    await whenEnded(hall, print, signal);
  }

  async function* one(copy: Copy): AsyncIterable<Copy> {
    yield copy;
  }

  app.get('/api/parts/:id/print', async (request, reply) => {
    const signed = await signedIn(deps, request);
    const { person } = signed;
    const hall: InHall = { ...deps, ...signed.hall };
    const { for: reader, ...look } = read(PrintAsked, request.query);
    const { part, facts } = await markedPart(hall, idOf(request.params), person);
    seatIn(facts, reader);
    const { print, signal, leave } = await asked(hall, reply, person, part.id, { copies: [{ part: part.id, for: reader }], ...look });
    try {
      const copy = await copyThere(hall, print, 0, signal);
      await whenEnded(hall, print, signal);
      if (!copy.made.ok) throw new TroubleAnswer(422, copy.made.trouble);
      await tellsHandedOut(hall.store.trail, person)(part, look.form, reader);
      const { jobs } = hall.store;
      const { suffix } = FORMS[look.form];
      const [first, ...more] = copy.files;
      if (more.length) return reply.type('application/zip').header('content-disposition', attachment(`${copy.name}.zip`)).send(packCopies(jobs, one(copy), suffix, leave));
      const bytes = Readable.from(jobs.bytes(first!.id), { objectMode: false }).once('close', leave);
      return reply.type(first!.mediaType).header('content-length', first!.size).header('content-disposition', attachment(`${copy.name}${suffix}`)).send(bytes);
    } catch (reason) {
      leave();
      throw reason;
    }
  });

  app.post('/api/works/:id/prints', async (request, reply) => {
    const signed = await signedIn(deps, request);
    const { person } = signed;
    const hall: InHall = { ...deps, ...signed.hall };
    const { copies, ...look } = read(PrintsAsked, request.body);
    const work = await hall.store.library.work(idOf(request.params));
    if (!work) throw notFound('work');
    const told: (() => Promise<void>)[] = [];
    for (const { part: id, for: readers } of copies) {
      const { part, facts } = await markedPart(hall, id, person);
      if (part.work.id !== work.id) throw notFound('part');
      for (const reader of readers) {
        seatIn(facts, reader);
        told.push(() => tellsHandedOut(hall.store.trail, person)(part, look.form, reader));
      }
    }
    const order = { copies: copies.flatMap(({ part, for: readers }) => readers.map((reader) => ({ part, for: reader }))), ...look };
    const { print, signal, leave } = await asked(hall, reply, person, work.id, order);
    for (const tell of told) await tell();
    const zip = packCopies(hall.store.jobs, copiesOf(hall, print, order.copies.length, signal), FORMS[look.form].suffix, leave);
    return reply.type('application/zip').header('content-disposition', attachment(`${work.title} - parts.zip`)).send(zip);
  });
}
