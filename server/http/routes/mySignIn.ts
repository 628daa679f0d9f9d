import type { FastifyInstance } from 'fastify';
import { AddressBody, ConfirmBody, PasswordBody, ProofBody, type MySignIn } from '../../../core/agreement/wire/signIn.ts';
import { claimLetter, tellOfChange } from '../../mail/signInLetters.ts';
import { wentWell } from '../../signIn/limits.ts';
import { isPassword, keptForm } from '../../signIn/passwords.ts';
import { weaknessOf, type Weakness } from '../../signIn/weakness.ts';
import type { LiveSession, SessionRow } from '../../store/door.ts';
import type { Deps } from '../deps.ts';
import { idOf, read } from '../input.ts';
import { renewSession, revoke, revokeOthers, someone } from '../session.ts';
import { hashOf, newToken } from '../tokens.ts';
import { notFound, trouble } from '../trouble.ts';
import { busy, count, isProven, mayChange, waysOf, whoMayChange } from '../waysIn.ts';

const CLAIM_HOURS = 24;
const HOUR = 60 * 60_000;

const WEAK: Record<Weakness, string> = {
  PASSWORD_SHORT: 'A password has 12 characters or more. Take a longer one: a few words in a row will do.',
  PASSWORD_LONG: 'A password has 128 characters at most. Take a shorter one.',
  PASSWORD_COMMON: 'This password is one of the first that are guessed, or made of two of them. Take another.',
  PASSWORD_NAMES: 'A password that holds your name, your ensemble’s or Bowline’s is guessed first. Take another.',
};

/** How I sign in, and where I am signed in. Whose it is comes from the sign-in alone. */
export function mySignInRoutes(app: FastifyInstance, deps: Deps): void {
  const { door } = deps;

  /** Whoever came by a librarian's link sees what was opened by such links alone. */
  async function shown({ person, only }: LiveSession): Promise<SessionRow[]> {
    return (await door.sessions(person.id, deps.now())).filter((one) => only === null || one.only === only);
  }

  async function view(session: LiveSession): Promise<MySignIn> {
    const { person, only, belongings } = session;
    const address = await door.address(person.id);
    return {
      address: address && { address: address.address, confirmed: address.confirmed },
      claimed: await door.claimed(person.id, deps.now()),
      password: (await door.password(person.id)) !== null,
      identity: deps.identity !== null && (await door.knowsIdentity(person.id, deps.identity.issuer)),
      offers: waysOf(deps),
      only: only === null ? null : (belongings[0]?.ensemble.name ?? ''),
      may: await mayChange(deps, session),
      proven: isProven(session, deps.now()),
      sessions: (await shown(session)).map(({ id, browser, device, way, begun, used }) => ({ id, browser, device, way, begun: begun.toISOString(), used: used.toISOString(), here: id === session.id })),
    };
  }

  app.get('/api/me/sign-in', async (request) => view(await someone(deps, request)));

  app.post('/api/me/proof', async (request, reply) => {
    const session = await someone(deps, request);
    const { password } = read(ProofBody, request.body);
    await count(deps, 'proofOfPerson', session.person.id);
    const same = await isPassword(password, await door.password(session.person.id));
    if (same === null) throw busy();
    if (!same) throw trouble(403, 'NOT_THE_PASSWORD', 'That is not your present password. Look at it again, or sign in anew by a link.');
    await wentWell(deps.attempts, 'proofOfPerson', session.person.id);
    const proven = deps.now();
    await renewSession(deps, reply, session.id, proven);
    return view({ ...session, proven });
  });

  app.put('/api/me/address', async (request) => {
    const session = await whoMayChange(deps, request);
    const { person } = session;
    const { address, language } = read(AddressBody, request.body);
    if (address === null) {
      const before = await door.address(person.id);
      await door.forgetAddress(person.id);
      // Without an address there is nothing to type beside it.
      await door.setPassword(person.id, null, deps.now());
      await door.tell(person.id, { kind: 'wayInRemoved', facts: { way: 'letter' } });
      await revokeOthers(deps, person.id, session.id);
      void tellOfChange(deps, person, 'address', before?.confirmed ? before : null);
      return view(session);
    }
    const to = { address: address.toLowerCase(), language };
    await count(deps, 'claimOfPerson', person.id);
    if (deps.post) await claim(deps.post, session, to);
    else if (!(await door.setAddress(person.id, to, null))) throw TAKEN();
    return view(session);
  });

  async function claim(post: NonNullable<Deps['post']>, { person }: LiveSession, to: { address: string; language: 'en' | 'de' | 'fr' | 'it' }): Promise<void> {
    const token = newToken();
    await door.claimAddress(person.id, hashOf(token), to, new Date(deps.now().getTime() + CLAIM_HOURS * HOUR));
    try {
      await post.send({ to: to.address, ...claimLetter(to.language, person.name, `${deps.address()}/sign-in?confirm=${token}`, CLAIM_HOURS) });
    } catch (reason) {
      deps.log('A letter to confirm an address was not taken by the post.', reason);
      throw trouble(502, 'POST_AWAY', 'The letter to this address was not taken by the post. Look at the address, then try again.');
    }
  }

  app.post('/api/me/address/confirm', async (request, reply) => {
    const session = await someone(deps, request);
    const { person } = session;
    const { token } = read(ConfirmBody, request.body);
    // What may be changed may have changed since the letter was asked for.
    const may = await mayChange(deps, session);
    const to = may ? await door.takeClaim(person.id, hashOf(token), deps.now()) : null;
    if (!to) throw trouble(410, 'CLAIM_OVER', 'This link confirms nothing here: it was used before, is too old, or belongs to somebody else’s sign-in. Ask for a new letter under “My sign-in”.');
    const before = await door.address(person.id);
    if (!(await door.setAddress(person.id, to, deps.now()))) throw TAKEN();
    await door.tell(person.id, { kind: 'wayInSet', facts: { way: 'letter' } });
    if (before?.confirmed && before.address !== to.address) void tellOfChange(deps, person, 'address', before);
    await renewSession(deps, reply, session.id, null);
    return view(session);
  });

  app.put('/api/me/password', async (request, reply) => {
    const session = await whoMayChange(deps, request);
    const { person, belongings } = session;
    const { password } = read(PasswordBody, request.body);
    if (password !== null) {
      const address = await door.address(person.id);
      if (!address) throw trouble(409, 'ADDRESS_FIRST', 'A password is typed beside an e-mail address. Give yours first, and confirm it where a letter asks you to.');
      const weak = await weaknessOf(password, [person.name, address.address.split('@')[0]!, ...belongings.map(({ ensemble }) => ensemble.name)]);
      if (weak) throw trouble(400, weak, WEAK[weak]);
    }
    const kept = password === null ? null : await keptForm(password);
    if (password !== null && kept === null) throw busy();
    await door.setPassword(person.id, kept, deps.now());
    await door.tell(person.id, { kind: kept === null ? 'wayInRemoved' : 'wayInSet', facts: { way: 'password' } });
    await revokeOthers(deps, person.id, session.id);
    await renewSession(deps, reply, session.id, null);
    void tellOfChange(deps, person, kept === null ? 'passwordGone' : 'passwordSet');
    return view(session);
  });

  app.delete('/api/me/identity', async (request, reply) => {
    const session = await whoMayChange(deps, request);
    await door.forgetIdentities(session.person.id);
    await door.tell(session.person.id, { kind: 'wayInRemoved', facts: { way: 'identity' } });
    await revokeOthers(deps, session.person.id, session.id);
    await renewSession(deps, reply, session.id, null);
    void tellOfChange(deps, session.person, 'identityGone');
    return view(session);
  });

  app.delete('/api/me/sessions/:id', async (request) => {
    const session = await someone(deps, request);
    const id = idOf(request.params);
    if (!(await shown(session)).some((one) => one.id === id)) throw notFound('sign-in of yours');
    await revoke(deps, id);
    return id === session.id ? { signedOut: true } : view(session);
  });

  app.delete('/api/me/sessions', async (request) => {
    const session = await someone(deps, request);
    for (const { id } of await shown(session)) if (id !== session.id) await revoke(deps, id);
    return view(session);
  });
}

const TAKEN = () => trouble(409, 'ADDRESS_TAKEN', 'Somebody else signs in with this address. Give another, or ask the librarian.');
