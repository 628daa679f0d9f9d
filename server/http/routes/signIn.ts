import type { FastifyInstance } from 'fastify';
import { SignInBody, type Me } from '../../../core/agreement/wire/http.ts';
import type { Person } from '../../store/people.ts';
import type { Deps } from '../deps.ts';
import { read } from '../input.ts';
import { cookieName, findSession, forgetCookie, openSession, signedIn } from '../session.ts';
import { hashOf } from '../tokens.ts';
import { trouble } from '../trouble.ts';

export function signInRoutes(app: FastifyInstance, deps: Deps): void {
  const { people } = deps.store;
  const me = async (person: Person): Promise<Me> => ({ ...person, memberships: await people.memberships(person.id) });

  async function end(token: string | undefined): Promise<void> {
    const session = await findSession(deps, token);
    if (!session) return;
    await people.revoke(session.id, deps.now());
    deps.notices.signedOut(session.id);
  }

  app.post('/api/sign-in', { config: { rateLimit: { max: Math.min(60, deps.requestsPerMinute) } } }, async (request, reply) => {
    const { token } = read(SignInBody, request.body);
    const person = await people.useLink(hashOf(token), deps.now());
    if (!person) throw trouble(410, 'LINK_USED', 'This sign-in link was used before or is too old. Ask the librarian for a new one.');
    // A new token at every sign-in; the one this browser had before ends.
    await end(request.cookies[cookieName(deps.origin)]);
    await openSession(deps, reply, person.id);
    return me(person);
  });

  app.post('/api/sign-out', async (request, reply) => {
    await end(request.cookies[cookieName(deps.origin)]);
    forgetCookie(deps, reply);
    return { signedOut: true };
  });

  app.get('/api/me', async (request) => me((await signedIn(deps, request)).person));
}
