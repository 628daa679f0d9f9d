import type { FastifyInstance, FastifyRequest } from 'fastify';
import { z } from 'zod';
import { EnsembleBody, type GoneView, NewPerson, StandingBody } from '../../../core/agreement/wire/http.ts';
import type { InvitationView } from '../../../core/agreement/wire/signIn.ts';
import type { Hall } from '../../halls.ts';
import { invitationLetter } from '../../mail/signInLetters.ts';
import type { NotChanged, Person } from '../../store/people.ts';
import type { LetterTo } from '../../store/ways.ts';
import type { Deps } from '../deps.ts';
import { idOf, printable, read } from '../input.ts';
import { addressOf } from '../origin.ts';
import { librarian } from '../session.ts';
import { LINK_DAYS, makeSignInLink } from '../tokens.ts';
import { notFound, trouble, type TroubleAnswer } from '../trouble.ts';

const Body = NewPerson.refine(({ name }) => printable(name), { path: ['name'], message: 'a name is made of letters' });
const Named = EnsembleBody.refine(({ name }) => printable(name), { path: ['name'], message: 'a name is made of letters' });
const Myself = z.object({ myself: z.stringbool().default(false) });

const notChanged = (why: NotChanged): TroubleAnswer =>
  why === 'notHere' ? notFound('person') : trouble(409, 'LAST_LIBRARIAN', 'Nothing was changed: nobody else here does the librarian’s work. Make somebody else a librarian first.');

/** What a librarian may do to themself, but hardly ever means. */
function meant(own: boolean, myself: boolean): void {
  if (own && !myself) throw trouble(409, 'YOURSELF', 'Nothing was changed: this is you. Say once more that you mean yourself.');
}

/** People of an ensemble: who is there, as what, who comes and who leaves. */
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

  const gone = async ({ store }: Hall): Promise<GoneView> => ({ gone: (await store.people.gone()).map(({ leftAt, ...person }) => ({ ...person, leftAt: leftAt.toISOString() })) });

  /** Parts that lie before somebody, of their usual section and of the programmes they sit in. */
  async function partsOf({ store }: Hall, person: string): Promise<string[]> {
    const programmes = new Set(await store.people.seatedIn(person, '1970-01-01'));
    const usual = new Set((await store.people.memberships(person)).map(({ section }) => section));
    const works = (await store.library.programmes()).flatMap(({ id, works: own }) => own.flatMap(({ parts }) => parts.filter((part) => programmes.has(id) || (part.section !== null && usual.has(part.section.id)))));
    return works.map(({ id }) => id);
  }

  const renewed = async (hall: Hall, person: string): Promise<void> => deps.notices.renewed(await partsOf(hall, person));

  app.post('/api/people', async (request) => {
    const { person: me, hall } = await librarian(deps, request);
    const { name, librarian: isLibrarian, deputy, letter } = read(Body, request.body);
    if (letter && !deps.post) throw trouble(409, 'NO_LETTERS', 'Nobody was added: this library sends no letters. Leave the address out, and hand the link out yourself.');
    const person = await hall.store.people.add(name, isLibrarian, deputy, me);
    return { person, link: await invite(request, hall, person, letter ?? null) };
  });

  app.put('/api/people/:id/standing', async (request) => {
    const { person: me, hall } = await librarian(deps, request);
    const id = idOf(request.params);
    const { myself, ...standing } = read(StandingBody, request.body);
    if (!standing.librarian) meant(id === me.id, myself);
    const person = await hall.store.people.stand(id, standing, me);
    if (typeof person === 'string') throw notChanged(person);
    deps.notices.left(id);
    await renewed(hall, id);
    return { person };
  });

  app.delete('/api/people/:id', async (request): Promise<GoneView> => {
    const { person: me, hall } = await librarian(deps, request);
    const id = idOf(request.params);
    meant(id === me.id, read(Myself, request.query).myself);
    const seated = await partsOf(hall, id);
    const why = await hall.store.people.leave(id, me);
    if (why) throw notChanged(why);
    // What the ensemble opened for them ends too; until then it reached nothing more.
    for (const session of await deps.door.shut(hall.ensemble, id, deps.now())) deps.notices.signedOut(session);
    deps.notices.left(id);
    deps.notices.renewed(seated);
    return gone(hall);
  });

  app.delete('/api/people/:id/sessions', async (request): Promise<{ ended: number }> => {
    const { person: me, hall } = await librarian(deps, request);
    const person = await hall.store.people.byId(idOf(request.params));
    if (!person) throw notFound('person');
    if (person.id === me.id) throw trouble(409, 'YOURSELF', 'Nothing was changed: this is you. Where you are signed in stands under “My sign-in”.');
    // What they open by a way of their own is theirs to end where it leads to other ensembles too.
    const ended = await door.shut(hall.ensemble, person.id, deps.now(), (await door.belongings(person.id)).length === 1);
    for (const session of ended) deps.notices.signedOut(session);
    await door.tell(person.id, { kind: 'sessionEnded', by: me }, hall.ensemble);
    return { ended: ended.length };
  });

  app.get('/api/people/gone', async (request) => gone((await librarian(deps, request)).hall));

  app.post('/api/people/:id/back', async (request) => {
    const { person: me, hall } = await librarian(deps, request);
    const { myself: _, ...standing } = read(StandingBody, request.body);
    const person = await hall.store.people.comeBack(idOf(request.params), standing, me);
    if (!person) throw notFound('person who has left');
    return { person };
  });

  app.put('/api/ensemble', async (request) => {
    const { person, hall } = await librarian(deps, request);
    const { name } = read(Named, request.body);
    if (!(await deps.door.nameEnsemble(hall.ensemble, name, person))) throw trouble(409, 'NAME_TAKEN', `Another ensemble here is called "${name}" already. Give yours another name.`);
    return { id: hall.ensemble, name };
  });

  app.post('/api/people/:id/link', async (request) => {
    const { person: me, hall } = await librarian(deps, request);
    const person = await hall.store.people.byId(idOf(request.params));
    if (!person) throw notFound('person');
    await door.tell(person.id, { kind: 'linkMade', by: me }, hall.ensemble);
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
