import type { FastifyInstance } from 'fastify';
import { AssignPart, type Shelf } from '../../../core/agreement/wire/http.ts';
import type { Deps } from '../deps.ts';
import { idOf, read } from '../input.ts';
import { librarian, signedIn } from '../session.ts';
import { notFound } from '../trouble.ts';

export function shelfRoutes(app: FastifyInstance, deps: Deps): void {
  app.get('/api/shelf', async (request): Promise<Shelf> => {
    const { person, hall, programmes: mine } = await signedIn(deps, request);
    const { library, sections, people } = hall.store;
    const [programmes, all, everybody] = await Promise.all([library.programmes(), sections.all(), person.librarian ? people.all() : []]);
    return { programmes: programmes.filter(({ id }) => mine?.has(id) ?? true), sections: all, people: everybody };
  });

  app.put('/api/parts/:id/section', async (request) => {
    const { person, hall } = await librarian(deps, request);
    const id = idOf(request.params);
    const { section } = read(AssignPart, request.body);
    if (!(await hall.store.library.assign(id, section, person))) throw notFound('part or section');
    deps.notices.renewed([id]);
    return { section };
  });
}
