import type { FastifyInstance } from 'fastify';
import { z } from 'zod';
import { NewSection, Seating } from '../../../core/agreement/wire/http.ts';
import { CheckSettings } from '../../../core/check/settings.ts';
import { settingsFault } from '../../../core/check/settingsFault.ts';
import type { InstrumentName } from '../../../core/music/part.ts';
import { planFits } from '../../store/sections.ts';
import type { Deps } from '../deps.ts';
import { idOf, printable, read } from '../input.ts';
import { librarian, signedIn } from '../session.ts';
import { notFound, trouble } from '../trouble.ts';

const Body = NewSection.refine(({ name }) => printable(name), { path: ['name'], message: 'a name is made of letters' });
const Settings = z.record(z.string().max(60), z.json());

export function sectionRoutes(app: FastifyInstance, deps: Deps): void {
  app.post('/api/sections', async (request) => {
    const { person, hall } = await librarian(deps, request);
    const { name, instrument } = read(Body, request.body);
    const section = await hall.store.sections.add(name, instrument, person);
    if (!section) throw trouble(409, 'NAME_TAKEN', `There is a section called "${name}" already. Give this one another name.`);
    return section;
  });

  app.put('/api/sections/:id/seating', async (request) => {
    const { person, hall } = await librarian(deps, request);
    const { sections } = hall.store;
    const id = idOf(request.params);
    const plan = read(Seating, request.body);
    if (!planFits(plan)) throw trouble(400, 'SEATED_TWICE', 'Nothing was changed: a seat or a person stands in the plan twice. Leave one of them out.');
    if (!(await sections.seat(id, plan, person))) throw notFound('section or person');
    deps.notices.renewed(await sections.parts(id));
    return sections.byId(id);
  });

  app.put('/api/sections/:id/settings', async (request) => {
    const { person, hall } = await signedIn(deps, request);
    const { sections } = hall.store;
    const id = idOf(request.params);
    const section = await sections.byId(id);
    if (!section) throw notFound('section');
    if (!person.librarian && section.principal?.id !== person.id) throw trouble(403, 'PRINCIPAL_ONLY', 'These numbers are set by the principal or the librarian. Ask one of them.');
    const settings = read(Settings, request.body);
    const stranger = Object.keys(settings).find((name) => !Object.hasOwn(CheckSettings.shape, name));
    const fault = stranger === undefined ? settingsFault(settings, section.instrument as InstrumentName) : `It knows no "${stranger}".`;
    if (fault) throw trouble(400, 'BAD_SETTING', `Nothing was changed: the checker cannot go by these numbers. ${fault} Correct it and try again.`);
    await sections.set(id, settings, person);
    deps.notices.renewed(await sections.parts(id));
    return sections.byId(id);
  });
}
