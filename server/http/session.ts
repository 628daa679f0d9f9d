import type { FastifyReply, FastifyRequest } from 'fastify';
import type { LiveSession } from '../store/door.ts';
import type { Deps } from './deps.ts';
import { notThere, openReach, reachOf, type Reach } from './reach.ts';
import { thingOf } from './thingOf.ts';
import { hashOf, inDays, newToken, SESSION_DAYS } from './tokens.ts';
import { trouble } from './trouble.ts';

const secure = (origin: string | null): boolean => origin?.startsWith('https:') ?? false;

/** Over https the prefix binds the cookie to this host; browsers refuse it over http. */
export const cookieName = (origin: string | null): string => (secure(origin) ? '__Host-bowline' : 'bowline');

export async function openSession(deps: Deps, reply: FastifyReply, person: string, only: string | null): Promise<void> {
  const token = newToken();
  await deps.door.openSession(person, hashOf(token), inDays(deps.now(), SESSION_DAYS), only);
  reply.setCookie(cookieName(deps.origin), token, { httpOnly: true, sameSite: 'lax', path: '/', secure: secure(deps.origin), maxAge: SESSION_DAYS * 24 * 60 * 60 });
}

export function forgetCookie(deps: Deps, reply: FastifyReply): void {
  reply.clearCookie(cookieName(deps.origin), { path: '/', secure: secure(deps.origin) });
}

export async function findSession(deps: Pick<Deps, 'door' | 'now'>, token: string | undefined): Promise<LiveSession | null> {
  return token ? deps.door.session(hashOf(token), deps.now()) : null;
}

/** A sign-in with the ensemble that the request is about. */
export interface SignedIn extends Reach {
  /** Of the session. */
  id: string;
  session: LiveSession;
}

/** Whoever only deputises sees their programmes and themselves; the rest of the ensemble is not their business. */
const FOR_DEPUTIES = /^\/api\/(shelf$|me(\/|$))/;

/** Who asks, whatever about: for what is their own in all ensembles. */
export async function someone(deps: Deps, request: FastifyRequest): Promise<LiveSession> {
  const session = await findSession(deps, request.cookies[cookieName(deps.origin)]);
  if (!session) throw trouble(401, 'SIGNED_OUT', 'You are not signed in. Open the sign-in link you were given, or ask the librarian for a new one.');
  return session;
}

/** Who asks, in the ensemble that has what they ask about: the thing that the address names, else the ensemble that lies open. */
export async function signedIn(deps: Deps, request: FastifyRequest): Promise<SignedIn> {
  const session = await someone(deps, request);
  const thing = thingOf(request);
  const reach = thing && session.belongings.length ? await reachOf(deps, session, thing) : await openReach(deps, session);
  if (!reach) throw notThere(thing!);
  if (!thing && reach.programmes && !FOR_DEPUTIES.test(request.routeOptions.url ?? '')) throw trouble(403, 'NOT_FOR_DEPUTIES', 'This is for members of the ensemble. You are here for single programmes: they are on your shelf.');
  return { ...reach, id: session.id, session };
}

export async function librarian(deps: Deps, request: FastifyRequest): Promise<SignedIn> {
  const signed = await signedIn(deps, request);
  if (!signed.person.librarian) throw trouble(403, 'LIBRARIAN_ONLY', 'This is for the librarian. Ask the librarian to do it.');
  return signed;
}
