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
  const { people } = deps.store;

  app.post('/api/people', async (request) => {
    await librarian(deps, request);
    const { name, librarian: isLibrarian } = read(Body, request.body);
    const person = await people.add(name, isLibrarian);
    return { person, link: await makeSignInLink(deps.store, addressOf(request.headers, deps.origin), person.id, deps.now()) };
  });

  app.post('/api/people/:id/link', async (request) => {
    await librarian(deps, request);
    const person = await people.byId(idOf(request.params));
    if (!person) throw notFound('person');
    return { person, link: await makeSignInLink(deps.store, addressOf(request.headers, deps.origin), person.id, deps.now()) };
  });
}
