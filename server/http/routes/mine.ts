import type { FastifyInstance } from 'fastify';
import { EraseBody } from '../../../core/agreement/wire/http.ts';
import { keptAbout } from '../../keptAbout.ts';
import { attachment } from '../attachment.ts';
import type { Deps } from '../deps.ts';
import { idOf, read } from '../input.ts';
import { forgetCookie, librarian, someone } from '../session.ts';
import { notFound, trouble } from '../trouble.ts';

const WRONG_NAME = () => trouble(422, 'WRONG_NAME', 'Nothing was erased: that is not the name as it is written here. Type it as it stands on the page.');

/** What is kept about a person, for that person; and an end to it. Whose it is comes from the sign-in, or from what the librarian names. */
export function mineRoutes(app: FastifyInstance, deps: Deps): void {
  async function erase(person: string, asker: string, comments: boolean): Promise<void> {
    const { sessions, parts } = await deps.door.erase(person, asker, comments);
    sessions.forEach((session) => deps.notices.signedOut(session));
    deps.notices.renewed(parts.map(({ part }) => part));
  }

  app.get('/api/me/kept', async (request, reply) => {
    const session = await someone(deps, request);
    await deps.door.tell(session.person.id, { kind: 'dataHandedOut' }, session.only);
    return reply.type('application/zip').header('content-disposition', attachment('what Bowline keeps about me.zip')).send(await keptAbout(deps, session));
  });

  app.post('/api/me/erase', async (request, reply) => {
    const { person, belongings, only } = await someone(deps, request);
    const { name, comments } = read(EraseBody, request.body);
    if (name !== person.name) throw WRONG_NAME();
    // A librarian's link opens one ensemble: what it opens must not end what somebody is in another.
    if (only !== null && (await deps.door.belongings(person.id)).length > 1) throw trouble(403, 'OTHER_ENSEMBLES', 'Nothing was erased: you belong to other ensembles too, and this sign-in is for one of them. Sign in by your own mail or password first.');
    for (const { ensemble, librarian: leads } of belongings) {
      const others = leads && !(await deps.hall(ensemble.id).store.people.all()).some((one) => one.librarian && one.id !== person.id);
      if (others) throw trouble(409, 'LAST_LIBRARIAN', 'Nothing was erased: nobody else does the librarian’s work in your ensemble. Make somebody else a librarian first.');
    }
    await erase(person.id, person.id, comments);
    forgetCookie(deps, reply);
    return { erased: true };
  });

  app.post('/api/people/:id/erase', async (request) => {
    const { person: me, hall } = await librarian(deps, request);
    const { name, comments } = read(EraseBody, request.body);
    const person = (await hall.store.people.gone()).find(({ id }) => id === idOf(request.params));
    if (!person) throw notFound('person who has left');
    if (name !== person.name) throw WRONG_NAME();
    const elsewhere = (await deps.door.belongings(person.id)).length + (await deps.door.left(person.id)).length > 1;
    if (elsewhere) throw trouble(409, 'OTHER_ENSEMBLES', 'Nothing was erased: this person is known in another ensemble here too. They can have themselves erased from their own shelf.');
    await erase(person.id, me.id, comments);
    return { erased: true };
  });
}
