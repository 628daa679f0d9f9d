import type { FastifyReply, FastifyRequest } from 'fastify';
import type { LiveSession } from '../store/door.ts';
import type { Deps } from './deps.ts';
import { notThere, openReach, reachOf, type Reach } from './reach.ts';
import { thingOf } from './thingOf.ts';
import type { Way } from '../../core/agreement/wire/signIn.ts';
import { deviceOf } from '../signIn/device.ts';
import { hashOf, holdsUntil, newToken, SESSION_DAYS } from './tokens.ts';
import { trouble } from './trouble.ts';

/** When a sign-in was last used is written down this often at most, in milliseconds. Chosen, not measured. */
const WRITTEN_EVERY = 5 * 60_000;

export const secure = (origin: string | null): boolean => origin?.startsWith('https:') ?? false;

/** Over https the prefix binds the cookie to this host; browsers refuse it over http. */
export const cookieName = (origin: string | null): string => (secure(origin) ? '__Host-bowline' : 'bowline');

/** A new token at every sign-in; the one this browser had before ends. `only`: the one ensemble that it reaches; null: all of the person's. */
export async function openSession(deps: Deps, request: FastifyRequest, reply: FastifyReply, person: string, only: string | null, way: Way): Promise<void> {
  await endSession(deps, request.cookies[cookieName(deps.origin)]);
  const token = newToken();
  const now = deps.now();
  await deps.door.openSession(person, hashOf(token), holdsUntil(now, now), only, { way, at: now, ...deviceOf(request.headers['user-agent']) });
  giveToken(deps, reply, token);
}

/** Another token for the same sign-in, so that what was seen of it before opens nothing. `proven`: whoever is signed in proved again who they are. */
export async function renewSession(deps: Deps, reply: FastifyReply, session: string, proven: Date | null): Promise<void> {
  const token = newToken();
  await deps.door.renew(session, hashOf(token), proven);
  giveToken(deps, reply, token);
}

function giveToken(deps: Deps, reply: FastifyReply, token: string): void {
  reply.setCookie(cookieName(deps.origin), token, { httpOnly: true, sameSite: 'lax', path: '/', secure: secure(deps.origin), maxAge: SESSION_DAYS * 24 * 60 * 60 });
}

export async function endSession(deps: Deps, token: string | undefined): Promise<void> {
  const session = token ? await deps.door.session(hashOf(token), deps.now()) : null;
  if (session) await revoke(deps, session.id);
}

/** Ends a sign-in and drops its live connections. */
export async function revoke(deps: Deps, session: string): Promise<void> {
  await deps.door.revoke(session, deps.now());
  deps.notices.signedOut(session);
}

/** Ends all sign-ins of a person but one. */
export async function revokeOthers(deps: Deps, person: string, but: string): Promise<void> {
  for (const { id } of await deps.door.sessions(person, deps.now())) if (id !== but) await revoke(deps, id);
}

export function forgetCookie(deps: Deps, reply: FastifyReply): void {
  reply.clearCookie(cookieName(deps.origin), { path: '/', secure: secure(deps.origin) });
}

export async function findSession(deps: Pick<Deps, 'door' | 'now'>, token: string | undefined): Promise<LiveSession | null> {
  const now = deps.now();
  const session = token ? await deps.door.session(hashOf(token), now) : null;
  if (session && now.getTime() - session.used.getTime() >= WRITTEN_EVERY) await deps.door.touch(session.id, now, holdsUntil(session.begun, now));
  return session;
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
