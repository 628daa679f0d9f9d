import type { FastifyInstance } from 'fastify';
import { LookIntoBody, SignInBody, type Me } from '../../../core/agreement/wire/http.ts';
import type { LiveSession } from '../../store/door.ts';
import type { Deps } from '../deps.ts';
import { read } from '../input.ts';
import { openReach } from '../reach.ts';
import { cookieName, findSession, forgetCookie, openSession, someone } from '../session.ts';
import { hashOf } from '../tokens.ts';
import { notFound, trouble } from '../trouble.ts';

export function signInRoutes(app: FastifyInstance, deps: Deps): void {
  const { door } = deps;

  async function me(session: Pick<LiveSession, 'person' | 'belongings' | 'open'>): Promise<Me> {
    const { person, hall } = await openReach(deps, session);
    const ensembles = session.belongings.map(({ ensemble }) => ensemble);
    return { ...person, ensemble: ensembles.find(({ id }) => id === hall.ensemble)!, ensembles, memberships: await hall.store.people.memberships(person.id) };
  }

  async function end(token: string | undefined): Promise<void> {
    const session = await findSession(deps, token);
    if (!session) return;
    await door.revoke(session.id, deps.now());
    deps.notices.signedOut(session.id);
  }

  app.post('/api/sign-in', { config: { rateLimit: { max: Math.min(60, deps.requestsPerMinute), keyGenerator: ({ ip }) => ip } } }, async (request, reply) => {
    const { token } = read(SignInBody, request.body);
    const link = await door.useLink(hashOf(token), deps.now());
    if (!link) throw trouble(410, 'LINK_USED', 'This sign-in link was used before or is too old. Ask the librarian for a new one.');
    // A new token at every sign-in; the one this browser had before ends.
    await end(request.cookies[cookieName(deps.origin)]);
    const { person, ensemble } = link;
    await openSession(deps, reply, person.id, ensemble);
    return me({ person, belongings: (await door.belongings(person.id)).filter((one) => ensemble === null || one.ensemble.id === ensemble), open: ensemble });
  });

  app.post('/api/sign-out', async (request, reply) => {
    await end(request.cookies[cookieName(deps.origin)]);
    forgetCookie(deps, reply);
    return { signedOut: true };
  });

  app.get('/api/me', async (request) => me(await someone(deps, request)));

  app.put('/api/me/ensemble', async (request) => {
    const session = await someone(deps, request);
    const { ensemble } = read(LookIntoBody, request.body);
    if (!session.belongings.some((one) => one.ensemble.id === ensemble)) throw notFound('ensemble among yours');
    await door.lookInto(session.id, ensemble);
    return me({ ...session, open: ensemble });
  });
}
