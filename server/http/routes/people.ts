import type { FastifyInstance, FastifyRequest } from 'fastify';
import { NewPerson } from '../../../core/agreement/wire/http.ts';
import type { InvitationView } from '../../../core/agreement/wire/signIn.ts';
import type { Hall } from '../../halls.ts';
import { invitationLetter } from '../../mail/signInLetters.ts';
import type { Person } from '../../store/people.ts';
import type { LetterTo } from '../../store/ways.ts';
import type { Deps } from '../deps.ts';
import { idOf, printable, read } from '../input.ts';
import { addressOf } from '../origin.ts';
import { librarian } from '../session.ts';
import { LINK_DAYS, makeSignInLink } from '../tokens.ts';
import { notFound, trouble } from '../trouble.ts';

const Body = NewPerson.refine(({ name }) => printable(name), { path: ['name'], message: 'a name is made of letters' });

export function peopleRoutes(app: FastifyInstance, deps: Deps): void {
  const { door } = deps;

  /** The link, for the librarian to hand out; null where it went by letter, seen by its reader alone. */
  async function invite(request: FastifyRequest, { ensemble }: Hall, person: Person, to: LetterTo | null): Promise<string | null> {
    const { post } = deps;
    if (!to || !post) return makeSignInLink(door, addressOf(request.headers, deps.origin), person.id, ensemble, deps.now(), { invitation: true, letter: null });
    const letter = { ...to, address: to.address.toLowerCase() };
    const link = await makeSignInLink(door, deps.address(), person.id, ensemble, deps.now(), { invitation: true, letter });
    const { name } = (await door.ensembles()).find(({ id }) => id === ensemble)!;
    try {
      await post.send({ to: letter.address, ...invitationLetter(to.language, person.name, name, link, LINK_DAYS) });
    } catch (reason) {
      deps.log('An invitation was not taken by the post.', reason);
      throw trouble(502, 'POST_AWAY', `${person.name} is among the people now, but the letter was not taken by the post. Give them a link by hand.`);
    }
    return null;
  }

  app.post('/api/people', async (request) => {
    const { hall } = await librarian(deps, request);
    const { name, librarian: isLibrarian, deputy, letter } = read(Body, request.body);
    if (letter && !deps.post) throw trouble(409, 'NO_LETTERS', 'Nobody was added: this library sends no letters. Leave the address out, and hand the link out yourself.');
    const person = await hall.store.people.add(name, isLibrarian, deputy);
    return { person, link: await invite(request, hall, person, letter ?? null) };
  });

  app.post('/api/people/:id/link', async (request) => {
    const { hall } = await librarian(deps, request);
    const person = await hall.store.people.byId(idOf(request.params));
    if (!person) throw notFound('person');
    return { person, link: await makeSignInLink(door, addressOf(request.headers, deps.origin), person.id, hall.ensemble, deps.now()) };
  });

  app.get('/api/invitations', async (request): Promise<{ letters: boolean; invitations: InvitationView[] }> => {
    const { hall } = await librarian(deps, request);
    const open = await door.invitations(hall.ensemble, deps.now());
    return { letters: deps.post !== null, invitations: open.map(({ until, ...one }) => ({ ...one, until: until.toISOString() })) };
  });

  app.delete('/api/invitations/:id', async (request) => {
    const { hall } = await librarian(deps, request);
    if (!(await door.withdraw(hall.ensemble, idOf(request.params), deps.now()))) throw notFound('open invitation');
    return { withdrawn: true };
  });
}
