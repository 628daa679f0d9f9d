import type { FastifyInstance, FastifyReply, FastifyRequest } from 'fastify';
import { IdentityWanted } from '../../../core/agreement/wire/signIn.ts';
import { tellOfChange } from '../../mail/signInLetters.ts';
import type { Identity, IdentityProvider } from '../../signIn/identityProvider.ts';
import type { Errand } from '../../store/ways.ts';
import type { Deps } from '../deps.ts';
import { read } from '../input.ts';
import { cookieName, findSession, openSession, renewSession, secure } from '../session.ts';
import { hashOf, newToken } from '../tokens.ts';
import { trouble } from '../trouble.ts';
import { count, mayChange, whoMayChange } from '../waysIn.ts';

const BACK = '/api/sign-in/identity/back';
const MINUTES = 10;

/** Why somebody who came back from the orchestra's own sign-in is not in; the page has a sentence for each. */
type Unfinished = 'ERRAND_OVER' | 'NOT_VOUCHED' | 'IDENTITY_UNKNOWN' | 'IDENTITY_TAKEN' | 'LINK_USED' | 'BY_LINK' | 'IDENTITY_AWAY';

/** To the orchestra's own sign-in and back. What belongs together is held by a cookie that the one browser has; the server keeps only its hash, and once. */
export function identityRoutes(app: FastifyInstance, deps: Deps): void {
  const { door } = deps;
  const cookie = `${secure(deps.origin) ? '__Host-' : ''}bowline-errand`;

  const provider = (): IdentityProvider => {
    if (!deps.identity) throw trouble(404, 'NO_IDENTITY', 'This library has no other sign-in beside it. Use a link or a password.');
    return deps.identity;
  };

  async function begin(reply: FastifyReply, errand: Errand): Promise<{ go: string }> {
    const secret = newToken();
    const go = await provider()
      .begin(secret, `${deps.address()}${BACK}`)
      .catch((reason: unknown) => {
        deps.log('The orchestra’s own sign-in could not be reached.', reason);
        throw trouble(502, 'IDENTITY_AWAY', 'The orchestra’s own sign-in does not answer just now. Wait a moment, or come in another way.');
      });
    await door.beginErrand(hashOf(secret), errand, new Date(deps.now().getTime() + MINUTES * 60_000));
    // Sent along when the browser comes back from another site, by a link and never by a form.
    reply.setCookie(cookie, secret, { httpOnly: true, sameSite: 'lax', path: '/', secure: secure(deps.origin), maxAge: MINUTES * 60 });
    return { go };
  }

  app.post('/api/sign-in/identity', async (request, reply) => {
    const { invitation } = read(IdentityWanted, request.body ?? {});
    await count(deps, 'identityFromNetwork', request.ip);
    return begin(reply, { session: null, link: invitation === undefined ? null : hashOf(invitation) });
  });

  app.post('/api/me/identity', async (request, reply) => begin(reply, { session: (await whoMayChange(deps, request)).id, link: null }));

  app.get(BACK, async (request, reply) => {
    const secret = request.cookies[cookie];
    reply.clearCookie(cookie, { path: '/', secure: secure(deps.origin) });
    const errand = secret ? await door.takeErrand(hashOf(secret), deps.now()) : null;
    if (!secret || !errand) return reply.redirect('/sign-in?trouble=ERRAND_OVER', 303);
    const identity = await provider()
      .finish(secret, new URL(request.url, deps.address()))
      .catch((reason: unknown) => {
        // What it says of itself may hold what a browser sent; its kind is enough.
        deps.log(`Somebody came back from the orchestra’s own sign-in without its word: ${(reason as { code?: string }).code ?? (reason as Error).name}.`);
        return null;
      });
    const left = identity === null ? 'NOT_VOUCHED' : errand.session !== null ? await bind(request, reply, errand.session, identity) : errand.link ? await accept(request, reply, errand.link, identity) : await enter(request, reply, identity);
    return reply.redirect(left === null ? (errand.session === null ? '/sign-in?came' : '/shelf') : `/sign-in?trouble=${left}`, 303);
  });

  /** Whoever is signed in is known by this identity from now on. */
  async function bind(request: FastifyRequest, reply: FastifyReply, id: string, identity: Identity): Promise<Unfinished | null> {
    const session = await findSession(deps, request.cookies[cookieName(deps.origin)]);
    if (session?.id !== id) return 'ERRAND_OVER';
    if (!(await mayChange(deps, session))) return 'BY_LINK';
    if (!(await door.bindIdentity(session.person.id, identity.issuer, identity.subject, deps.now()))) return 'IDENTITY_TAKEN';
    await door.tell(session.person.id, { kind: 'wayInSet', facts: { way: 'identity' } });
    await renewSession(deps, reply, session.id, null);
    void tellOfChange(deps, session.person, 'identityBound');
    return null;
  }

  /** Somebody new comes with an invitation and is known by this identity from now on. */
  async function accept(request: FastifyRequest, reply: FastifyReply, link: Uint8Array, identity: Identity): Promise<Unfinished | null> {
    if (await door.whoseIdentity(identity.issuer, identity.subject)) return 'IDENTITY_TAKEN';
    const used = await door.useLink(link, deps.now());
    if (!used) return 'LINK_USED';
    const { person } = used;
    // A link for somebody who is here already gives them no way of their own: whoever made it could come in by it, too.
    if (!used.invitation || !(await mayChange(deps, { only: used.ensemble, person }))) return 'BY_LINK';
    if (!(await door.bindIdentity(person.id, identity.issuer, identity.subject, deps.now()))) return 'IDENTITY_TAKEN';
    await door.tell(person.id, { kind: 'wayInSet', facts: { way: 'identity' } });
    await openSession(deps, request, reply, person.id, null, 'identity');
    return null;
  }

  async function enter(request: FastifyRequest, reply: FastifyReply, identity: Identity): Promise<Unfinished | null> {
    const person = await door.whoseIdentity(identity.issuer, identity.subject);
    if (!person) return 'IDENTITY_UNKNOWN';
    await openSession(deps, request, reply, person.id, null, 'identity');
    return null;
  }
}
