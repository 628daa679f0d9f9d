import type { FastifyInstance, FastifyRequest } from 'fastify';
import { z } from 'zod';
import { Seating, type ProgrammeView } from '../../../core/agreement/wire/http.ts';
import type { ProgrammeOverview } from '../../../core/agreement/wire/overview.ts';
import { ProgrammeBody } from '../../../core/agreement/wire/programme.ts';
import { planFits, type SeatingPlan } from '../../store/sections.ts';
import { overviewOf } from '../../waiting/overviewOf.ts';
import type { Hall } from '../../halls.ts';
import type { Deps } from '../deps.ts';
import { printable, read } from '../input.ts';
import { librarian, signedIn, type SignedIn } from '../session.ts';
import { notFound, trouble } from '../trouble.ts';

const Id = z.string().min(1).max(64).refine(printable);
const OfProgramme = z.object({ id: Id });
const OfSection = z.object({ id: Id, section: Id });
const Body = ProgrammeBody.refine(({ title, season, conductor, days }) => [title, season, conductor, ...days.map(({ words }) => words)].every(printable), { path: ['title'], message: 'titles, names and words are made of letters' });

export function programmeRoutes(app: FastifyInstance, deps: Deps): void {
  async function programmeOf({ store }: Hall, id: string): Promise<ProgrammeView> {
    const programme = await store.library.programme(id);
    if (!programme) throw notFound('programme');
    return programme;
  }

  /** What lies on a section's stands in one programme is sent anew to whoever has it open. */
  async function renewed(hall: Hall, id: string, section: string): Promise<void> {
    const { works } = await programmeOf(hall, id);
    deps.notices.renewed(works.flatMap(({ parts }) => parts.filter((part) => part.section?.id === section).map((part) => part.id)));
  }

  async function seat(request: FastifyRequest, { hall, person }: SignedIn, plan: SeatingPlan | null): Promise<ProgrammeView> {
    const { id, section } = read(OfSection, request.params);
    if (plan && !planFits(plan)) throw trouble(400, 'SEATED_TWICE', 'Nothing was changed: a seat or a person stands in the plan twice. Leave one of them out.');
    if (!(await hall.store.sections.seatFor(id, section, plan, person))) throw notFound('programme, section or person');
    await renewed(hall, id, section);
    return programmeOf(hall, id);
  }

  app.get('/api/programmes/:id/overview', async (request): Promise<ProgrammeOverview> => {
    const { hall } = await signedIn(deps, request);
    const { id } = read(OfProgramme, request.params);
    return overviewOf(hall, await programmeOf(hall, id), deps.now().toISOString().slice(0, 10));
  });

  app.post('/api/programmes', async (request) => {
    const { person, hall } = await librarian(deps, request);
    return hall.store.library.addProgramme(read(Body, request.body), person);
  });

  app.put('/api/programmes/:id', async (request) => {
    const { person, hall } = await librarian(deps, request);
    const { id } = read(OfProgramme, request.params);
    if (!(await hall.store.library.setProgramme(id, read(Body, request.body), person))) throw notFound('programme');
    return programmeOf(hall, id);
  });

  app.put('/api/programmes/:id/sections/:section/seating', async (request) => {
    return seat(request, await librarian(deps, request), read(Seating, request.body));
  });

  app.delete('/api/programmes/:id/sections/:section/seating', async (request) => {
    return seat(request, await librarian(deps, request), null);
  });
}
