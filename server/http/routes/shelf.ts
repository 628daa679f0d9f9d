import type { FastifyInstance } from 'fastify';
import { AssignPart, type Shelf } from '../../../core/agreement/wire/http.ts';
import type { Deps } from '../deps.ts';
import { idOf, read } from '../input.ts';
import { librarian, signedIn } from '../session.ts';
import { notFound } from '../trouble.ts';

export function shelfRoutes(app: FastifyInstance, deps: Deps): void {
  const { library, people, sections } = deps.store;

  app.get('/api/shelf', async (request): Promise<Shelf> => {
    const { person } = await signedIn(deps, request);
    const [programmes, all, everybody] = await Promise.all([library.programmes(), sections.all(), person.librarian ? people.all() : []]);
    return { programmes, sections: all, people: everybody };
  });

  app.put('/api/parts/:id/section', async (request) => {
    await librarian(deps, request);
    const id = idOf(request.params);
    const { section } = read(AssignPart, request.body);
    if (!(await library.assign(id, section))) throw notFound('part or section');
    deps.notices.renewed([id]);
    return { section };
  });
}
