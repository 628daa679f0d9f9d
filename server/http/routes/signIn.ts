import type { FastifyInstance, FastifyReply, FastifyRequest } from 'fastify';
import { LookIntoBody, type Me } from '../../../core/agreement/wire/http.ts';
import { LetterWanted, PasswordSignIn, SignInBody, TakeUpBody, type WaysIn } from '../../../core/agreement/wire/signIn.ts';
import { linkLetter } from '../../mail/signInLetters.ts';
import type { LiveSession, NotTakenUp } from '../../store/door.ts';
import { wentWell } from '../../signIn/limits.ts';
import { isPassword } from '../../signIn/passwords.ts';
import type { Deps } from '../deps.ts';
import { read } from '../input.ts';
import { openReach } from '../reach.ts';
import { cookieName, endSession, forgetCookie, openSession, someone } from '../session.ts';
import { hashOf, LETTER_MINUTES, makeAskedLink } from '../tokens.ts';
import { notFound, trouble, type TroubleAnswer } from '../trouble.ts';
import { busy, count, waysOf } from '../waysIn.ts';

const NO_MATCH = trouble(401, 'NO_MATCH', 'This address and this password do not go together. Look at both, or have a link sent to you, or ask the librarian for one.');

const NOT_TAKEN_UP: Record<NotTakenUp, TroubleAnswer> = {
  over: trouble(410, 'LINK_USED', 'This sign-in link was used before or is too old. Ask the librarian for a new one.'),
  cameIn: trouble(409, 'CAME_AS_NEW', 'Nothing was changed: whoever was invited has come in as somebody new already. Ask the librarian to take that name out and to invite you once more.'),
  hereAlready: trouble(409, 'HERE_ALREADY', 'Nothing was changed: you are in this ensemble already. The librarian can withdraw the invitation.'),
};

export function signInRoutes(app: FastifyInstance, deps: Deps): void {
  const { door } = deps;

  async function me(session: Pick<LiveSession, 'person' | 'belongings' | 'open'>): Promise<Me> {
    const { person, hall } = await openReach(deps, session);
    const ensembles = session.belongings.map(({ ensemble }) => ensemble);
    return { ...person, ensemble: ensembles.find(({ id }) => id === hall.ensemble)!, ensembles, memberships: await hall.store.people.memberships(person.id) };
  }

  app.get('/api/sign-in', async (): Promise<WaysIn> => waysOf(deps));

  app.post('/api/sign-in', { config: { rateLimit: { max: Math.min(60, deps.requestsPerMinute), keyGenerator: ({ ip }) => ip } } }, async (request, reply) => {
    const { token } = read(SignInBody, request.body);
    const now = deps.now();
    const link = await door.useLink(hashOf(token), now);
    if (!link) throw trouble(410, 'LINK_USED', 'This sign-in link was used before or is too old. Ask the librarian for a new one.');
    const { person, invitation, letter } = link;
    // Nobody but the owner of the address has seen an invitation that went there: it is theirs, and so is all they come to later.
    const theirs = invitation && letter !== null && (await door.address(person.id)) === null && (await door.setAddress(person.id, letter, now));
    const only = theirs ? null : link.ensemble;
    await openSession(deps, request, reply, person.id, only, invitation ? 'invitation' : link.ensemble === null ? 'letter' : 'link');
    return me({ person, belongings: (await door.belongings(person.id)).filter((one) => only === null || one.ensemble.id === only), open: only });
  });

  app.post('/api/sign-in/password', async (request, reply) => {
    const { address: typed, password } = read(PasswordSignIn, request.body);
    const address = typed.toLowerCase();
    await count(deps, 'passwordFromNetwork', request.ip);
    await count(deps, 'passwordForAddress', address);
    const found = await door.whoseAddress(address);
    // Asked in any case, so that an address that is not known takes as long.
    const kept = await door.password(found?.person.id ?? '');
    const same = await isPassword(password, kept);
    if (same === null) throw busy();
    // Not waited for: the answer takes as long as for an address that nobody knows.
    if (found && !same) door.tell(found.person.id, { kind: 'signInFailed', by: null, facts: { way: 'password' } }).catch((reason: unknown) => deps.log('A failed sign-in was not told in the trail.', reason));
    if (!same || !found) throw NO_MATCH;
    await wentWell(deps.attempts, 'passwordForAddress', address);
    return come(request, reply, found.person);
  });

  async function come(request: FastifyRequest, reply: FastifyReply, person: LiveSession['person']): Promise<Me> {
    await openSession(deps, request, reply, person.id, null, 'password');
    return me({ person, belongings: await door.belongings(person.id), open: null });
  }

  app.post('/api/sign-in/letter', async (request, reply) => {
    const address = read(LetterWanted, request.body).address.toLowerCase();
    const { post } = deps;
    if (!post) throw trouble(404, 'NO_LETTERS', 'This library sends no letters. Ask the librarian for a link.');
    await count(deps, 'letterFromNetwork', request.ip);
    await count(deps, 'letterToAddress', address);
    // Looked up and sent after the answer, which is the same and as quick for an address that nobody knows.
    void sendLink(address, post).catch((reason: unknown) => deps.log('A link to sign in was not taken by the post.', reason));
    return reply.code(202).send({ minutes: LETTER_MINUTES });
  });

  async function sendLink(address: string, post: NonNullable<Deps['post']>): Promise<void> {
    const found = await door.whoseAddress(address);
    if (!found?.to.confirmed) return;
    const link = await makeAskedLink(door, deps.address(), found.person.id, deps.now());
    await post.send({ to: found.to.address, ...linkLetter(found.to.language, found.person.name, link, LETTER_MINUTES) });
  }

  app.post('/api/sign-out', async (request, reply) => {
    await endSession(deps, request.cookies[cookieName(deps.origin)]);
    forgetCookie(deps, reply);
    return { signedOut: true };
  });

  app.get('/api/me', async (request) => me(await someone(deps, request)));

  app.post('/api/me/invitations', async (request) => {
    const session = await someone(deps, request);
    const { token } = read(TakeUpBody, request.body);
    if (session.only !== null) throw trouble(409, 'BOUND_SIGN_IN', 'Nothing was changed: you came in by a librarian’s link, which reaches one ensemble alone. Come in by a way of your own, then open the invitation again.');
    const ensemble = await door.takeUp(hashOf(token), session.person.id, deps.now());
    if (typeof ensemble === 'string') throw NOT_TAKEN_UP[ensemble];
    await door.tell(session.person.id, { kind: 'signedIn', facts: { way: 'invitation' } }, ensemble.id);
    await door.lookInto(session.id, ensemble.id);
    // Seats that were kept for them are theirs by their own name now.
    const { store } = deps.hall(ensemble.id);
    deps.notices.renewed((await Promise.all((await store.people.memberships(session.person.id)).map(({ section }) => store.sections.parts(section)))).flat());
    return me({ ...session, belongings: await door.belongings(session.person.id), open: ensemble.id });
  });

  app.put('/api/me/ensemble', async (request) => {
    const session = await someone(deps, request);
    const { ensemble } = read(LookIntoBody, request.body);
    if (!session.belongings.some((one) => one.ensemble.id === ensemble)) throw notFound('ensemble among yours');
    await door.lookInto(session.id, ensemble);
    return me({ ...session, open: ensemble });
  });
}
