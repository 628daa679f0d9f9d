import type { FastifyInstance, FastifyReply, FastifyRequest } from 'fastify';
import { attachment } from '../attachment.ts';
import type { Deps } from '../deps.ts';
import { idOf, read } from '../input.ts';
import { markedPart } from '../markedPart.ts';
import { copyOf, PrintAsked, PrintsAsked } from '../prints/copyOf.ts';
import { FORMS } from '../prints/forms.ts';
import { packCopies, type Copy } from '../prints/packCopies.ts';
import { signedIn, type SignedIn } from '../session.ts';
import { notFound, trouble, TroubleAnswer } from '../trouble.ts';

/** Parts as pages, one at a time for each person; what nobody waits for any more is stopped. */
export function printRoutes(app: FastifyInstance, deps: Deps): void {
  const printing = new Set<string>();

  /** Runs a print for somebody who has no other, until it is done or its asker goes away. */
  async function alone<T>(request: FastifyRequest, reply: FastifyReply, work: (session: SignedIn, signal: AbortSignal, done: () => void) => Promise<T>): Promise<T> {
    const session = await signedIn(deps, request);
    const { id } = session.person;
    if (printing.has(id)) throw trouble(429, 'PRINTING', 'Your last print is still being made. Wait until it is there, then ask for the next.');
    const gone = new AbortController();
    reply.raw.once('close', () => gone.abort(new Error('Nobody waits for this print any more.')));
    printing.add(id);
    const done = () => printing.delete(id);
    try {
      return await work(session, gone.signal, done);
    } catch (error) {
      done();
      throw error;
    }
  }

  app.get('/api/parts/:id/print', (request, reply) =>
    alone(request, reply, async ({ person, hall }, signal, done) => {
      const asked = read(PrintAsked, request.query);
      const marked = await markedPart(hall, idOf(request.params), person);
      const { order, name } = await copyOf({ ...deps, ...hall }, marked, asked.for, asked);
      const { make, suffix } = FORMS[asked.form];
      const made = await make(deps, order, signal);
      done();
      if (!made.ok) throw new TroubleAnswer(422, made.trouble);
      const [first, ...more] = made.files;
      if (more.length) return reply.type('application/zip').header('content-disposition', attachment(`${name}.zip`)).send(packCopies([{ name, make: async () => made }], suffix, signal, done));
      return reply.type(first!.mediaType).header('content-disposition', attachment(`${name}${suffix}`)).send(Buffer.from(first!.bytes));
    }),
  );

  app.post('/api/works/:id/prints', (request, reply) =>
    alone(request, reply, async ({ person, hall }, signal, done) => {
      const asked = read(PrintsAsked, request.body);
      const work = await hall.store.library.work(idOf(request.params));
      if (!work) throw notFound('work');
      const { make, suffix } = FORMS[asked.form];
      const copies: Copy[] = [];
      for (const { part, for: readers } of asked.copies) {
        const marked = await markedPart(hall, part, person);
        if (marked.part.work.id !== work.id) throw notFound('part');
        for (const reader of readers) {
          const { order, name } = await copyOf({ ...deps, ...hall }, marked, reader, asked);
          copies.push({ name, make: () => make(deps, order, signal) });
        }
      }
      return reply.type('application/zip').header('content-disposition', attachment(`${work.title} - parts.zip`)).send(packCopies(copies, suffix, signal, done));
    }),
  );
}
