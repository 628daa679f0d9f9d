import type { FastifyReply, FastifyRequest } from 'fastify';
import type { LiveSession } from '../store/people.ts';
import type { Deps } from './deps.ts';
import { hashOf, inDays, newToken, SESSION_DAYS } from './tokens.ts';
import { trouble } from './trouble.ts';

const secure = (origin: string | null): boolean => origin?.startsWith('https:') ?? false;

/** Over https the prefix binds the cookie to this host; browsers refuse it over http. */
export const cookieName = (origin: string | null): string => (secure(origin) ? '__Host-bowline' : 'bowline');

export async function openSession(deps: Deps, reply: FastifyReply, person: string): Promise<void> {
  const token = newToken();
  await deps.store.people.openSession(person, hashOf(token), inDays(deps.now(), SESSION_DAYS));
  reply.setCookie(cookieName(deps.origin), token, { httpOnly: true, sameSite: 'lax', path: '/', secure: secure(deps.origin), maxAge: SESSION_DAYS * 24 * 60 * 60 });
}

export function forgetCookie(deps: Deps, reply: FastifyReply): void {
  reply.clearCookie(cookieName(deps.origin), { path: '/', secure: secure(deps.origin) });
}

export async function findSession(deps: Deps, token: string | undefined): Promise<LiveSession | null> {
  return token ? deps.store.people.session(hashOf(token), deps.now()) : null;
}

export async function signedIn(deps: Deps, request: FastifyRequest): Promise<LiveSession> {
  const session = await findSession(deps, request.cookies[cookieName(deps.origin)]);
  if (!session) throw trouble(401, 'SIGNED_OUT', 'You are not signed in. Open the sign-in link you were given, or ask the librarian for a new one.');
  return session;
}

export async function librarian(deps: Deps, request: FastifyRequest): Promise<LiveSession> {
  const session = await signedIn(deps, request);
  if (!session.person.librarian) throw trouble(403, 'LIBRARIAN_ONLY', 'This is for the librarian. Ask the librarian to do it.');
  return session;
}
