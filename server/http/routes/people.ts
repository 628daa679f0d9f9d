import type { FastifyInstance } from 'fastify';
import { NewPerson } from '../../../core/agreement/wire/http.ts';
import type { Deps } from '../deps.ts';
import { idOf, printable, read } from '../input.ts';
import { addressOf } from '../origin.ts';
import { librarian } from '../session.ts';
import { makeSignInLink } from '../tokens.ts';
import { notFound } from '../trouble.ts';

const Body = NewPerson.refine(({ name }) => printable(name), { path: ['name'], message: 'a name is made of letters' });

export function peopleRoutes(app: FastifyInstance, deps: Deps): void {
  app.post('/api/people', async (request) => {
    const { hall } = await librarian(deps, request);
    const { name, librarian: isLibrarian, deputy } = read(Body, request.body);
    const person = await hall.store.people.add(name, isLibrarian, deputy);
    return { person, link: await makeSignInLink(deps.door, addressOf(request.headers, deps.origin), person.id, hall.ensemble, deps.now()) };
  });

  app.post('/api/people/:id/link', async (request) => {
    const { hall } = await librarian(deps, request);
    const person = await hall.store.people.byId(idOf(request.params));
    if (!person) throw notFound('person');
    return { person, link: await makeSignInLink(deps.door, addressOf(request.headers, deps.origin), person.id, hall.ensemble, deps.now()) };
  });
}
