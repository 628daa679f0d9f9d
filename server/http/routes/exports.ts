import type { FastifyInstance, FastifyRequest } from 'fastify';
import { z } from 'zod';
import { changeList } from '../../../core/agreement/changeList.ts';
import { marksOnCopy } from '../../../core/print/copy.ts';
import { SeatId } from '../../../core/music/seat.ts';
import { attachment } from '../attachment.ts';
import { changesAsCsv, changesAsText } from '../changeTable.ts';
import type { Deps } from '../deps.ts';
import { idOf, read } from '../input.ts';
import { markedPart } from '../markedPart.ts';
import { tellsHandedOut } from '../handedOut.ts';
import { signedIn } from '../session.ts';
import { trouble, TroubleAnswer } from '../trouble.ts';

const Export = z.object({ for: z.union([z.literal('section'), SeatId]).default('section'), form: z.enum(['musicxml', 'mxl']).default('musicxml') });
const Changes = z.object({ form: z.enum(['csv', 'text']).default('csv') });

export function exportRoutes(app: FastifyInstance, deps: Deps): void {
  async function marked(request: FastifyRequest) {
    const { person, hall } = await signedIn(deps, request);
    return { ...(await markedPart(hall, idOf(request.params), person)), library: hall.store.library, handedOut: tellsHandedOut(hall.store.trail, person) };
  }

  app.get('/api/parts/:id/export', async (request, reply) => {
    const { part, section, state, facts, library, handedOut } = await marked(request);
    const { for: reader, form } = read(Export, request.query);
    if (reader !== 'section' && !facts.seats.includes(reader)) throw trouble(404, 'NO_SUCH_SEAT', `The section has no seat ${reader}. Choose one of its seats, or the whole section.`);
    const marks = marksOnCopy(state, reader, facts.seats).filter(({ note }) => facts.notes.has(note));
    const source = (await library.source(part.edition))!;
    const made = await deps.documents.markDocument({ ...source, part: part.content.id, ids: part.content, marks, form, superseded: 'hide' });
    if (!made.ok) throw new TroubleAnswer(422, made.trouble);
    await handedOut(part, form, reader);
    const name = `${part.work.title} - ${part.content.name} - ${reader === 'section' ? (section?.name ?? 'as marked') : reader}.${form}`;
    return reply.type(made.mediaType).header('content-disposition', attachment(name)).send(Buffer.from(made.bytes));
  });

  app.get('/api/parts/:id/changes', async (request, reply) => {
    const { part, state, facts, handedOut } = await marked(request);
    const { form } = read(Changes, request.query);
    const changes = changeList(state, facts);
    await handedOut(part, 'changes', 'section');
    const title = `${part.work.title} - ${part.content.name}`;
    const text = form === 'csv' ? changesAsCsv(changes, part.content) : changesAsText(changes, part.content, title);
    return reply
      .type(form === 'csv' ? 'text/csv; charset=utf-8' : 'text/plain; charset=utf-8')
      .header('content-disposition', attachment(`${title} - changes.${form === 'csv' ? 'csv' : 'txt'}`))
      .send(text);
  });
}
