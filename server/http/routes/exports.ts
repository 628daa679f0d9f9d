import type { FastifyInstance, FastifyRequest } from 'fastify';
import { z } from 'zod';
import { changeList } from '../../../core/agreement/changeList.ts';
import { factsOf } from '../../../core/agreement/facts.ts';
import { inForce, marksFor, type MarkInForce } from '../../../core/agreement/inForce.ts';
import { placeIn } from '../../../core/agreement/seating.ts';
import type { AgreementState } from '../../../core/agreement/state.ts';
import { SeatId } from '../../../core/music/seat.ts';
import { attachment } from '../attachment.ts';
import { changesAsCsv, changesAsText } from '../changeTable.ts';
import type { Deps } from '../deps.ts';
import { idOf, read } from '../input.ts';
import { signedIn } from '../session.ts';
import { notFound, trouble, TroubleAnswer } from '../trouble.ts';

const Export = z.object({ for: z.union([z.literal('section'), SeatId]).default('section'), form: z.enum(['musicxml', 'mxl']).default('musicxml') });
const Changes = z.object({ form: z.enum(['csv', 'text']).default('csv') });

export function exportRoutes(app: FastifyInstance, deps: Deps): void {
  const { library, sections } = deps.store;

  /** The part and what was agreed on it, for its principal or the librarian. */
  async function marked(request: FastifyRequest) {
    const { person } = await signedIn(deps, request);
    const part = await library.part(idOf(request.params));
    if (!part) throw notFound('part');
    const section = await sections.ofPart(part.id);
    const leads = section !== null && placeIn(section, person.id)?.principal;
    if (!person.librarian && !leads) throw trouble(403, 'NOT_YOUR_EXPORT', 'Marked parts are given out by the librarian or the principal of the section. Ask one of them.');
    const { state } = (await deps.authority.current(part.id))!;
    return { part, section, state, facts: factsOf(part.content, section?.seats.map(({ seat }) => seat) ?? []) };
  }

  app.get('/api/parts/:id/export', async (request, reply) => {
    const { part, section, state, facts } = await marked(request);
    const { for: reader, form } = read(Export, request.query);
    if (reader !== 'section' && !facts.seats.includes(reader)) throw trouble(404, 'NO_SUCH_SEAT', `The section has no seat ${reader}. Choose one of its seats, or the whole section.`);
    const marks = (reader === 'section' ? forSection(state) : marksFor(reader, inForce(state, facts.seats))).filter(({ note }) => facts.notes.has(note));
    const source = (await library.source(part.edition))!;
    const made = await deps.documents.markDocument({ ...source, part: part.content.id, ids: part.content, marks, form, superseded: 'hide' });
    if (!made.ok) throw new TroubleAnswer(422, made.trouble);
    const name = `${part.work.title} - ${part.content.name} - ${reader === 'section' ? (section?.name ?? 'as marked') : reader}.${form}`;
    return reply.type(made.mediaType).header('content-disposition', attachment(name)).send(Buffer.from(made.bytes));
  });

  app.get('/api/parts/:id/changes', async (request, reply) => {
    const { part, state, facts } = await marked(request);
    const { form } = read(Changes, request.query);
    const changes = changeList(state, facts);
    const title = `${part.work.title} - ${part.content.name}`;
    const text = form === 'csv' ? changesAsCsv(changes, part.content) : changesAsText(changes, part.content, title);
    return reply
      .type(form === 'csv' ? 'text/csv; charset=utf-8' : 'text/plain; charset=utf-8')
      .header('content-disposition', attachment(`${title} - changes.${form === 'csv' ? 'csv' : 'txt'}`))
      .send(text);
  });
}

/** What everybody plays: marks of single seats are left out, and what stands under them for the others shows. */
function forSection(state: AgreementState): MarkInForce[] {
  return inForce({ ...state, ink: state.ink.filter((one) => one.seats === 'all') }, []);
}
