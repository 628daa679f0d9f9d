import type { FastifyRequest } from 'fastify';
import type { WaysIn } from '../../core/agreement/wire/signIn.ts';
import { within, type Limit } from '../signIn/limits.ts';
import type { LiveSession } from '../store/door.ts';
import type { Deps } from './deps.ts';
import { someone } from './session.ts';
import { trouble, type TroubleAnswer } from './trouble.ts';

/** How long after somebody proved who they are they may change how they sign in, in milliseconds. Chosen, not measured. */
const PROVEN_FOR = 10 * 60_000;

export const waysOf = ({ post, identity }: Pick<Deps, 'post' | 'identity'>): WaysIn => ({ letter: post !== null, identity: identity?.name ?? null });

export const busy = (): TroubleAnswer => trouble(503, 'BUSY', 'The library has its hands full. Wait a moment, then do it again.');

/** Counts a try, or answers that there were too many. */
export async function count(deps: Pick<Deps, 'attempts' | 'now'>, limit: Limit, of: string): Promise<void> {
  if (!(await within(deps.attempts, limit, of, deps.now()))) throw trouble(429, 'TOO_OFTEN', 'That was tried too often. Wait a quarter of an hour, or come in another way.');
}

export const isProven = (session: LiveSession, now: Date): boolean => now.getTime() - session.proven.getTime() < PROVEN_FOR;

/**
 * Whether how somebody signs in can be changed from this sign-in. A librarian's link reaches one ensemble, and a way of one's own reaches all: so a link may
 * give the first way to somebody who is nowhere else, and never one more.
 */
export async function mayChange({ door, identity }: Pick<Deps, 'door' | 'identity'>, { only, person }: Pick<LiveSession, 'only' | 'person'>): Promise<boolean> {
  if (only === null) return true;
  if ((await door.belongings(person.id)).length > 1) return false;
  const ways = [await door.address(person.id), await door.password(person.id), identity !== null && (await door.knowsIdentity(person.id, identity.issuer))];
  return !ways.some(Boolean);
}

/** Somebody who may change how they sign in, and has just proved who they are. */
export async function whoMayChange(deps: Deps, request: FastifyRequest): Promise<LiveSession> {
  const session = await someone(deps, request);
  if (!(await mayChange(deps, session))) throw trouble(403, 'BY_LINK', 'You came in by a librarian’s link. To change how you sign in, come in by a way of your own first.');
  if (!isProven(session, deps.now())) throw trouble(403, 'PROVE_FIRST', 'This needs to be you: give your present password, or sign in anew, and do it within ten minutes.');
  return session;
}
