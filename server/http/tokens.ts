import { createHash, randomBytes } from 'node:crypto';
import type { Door, LinkMore } from '../store/door.ts';

const DAY = 24 * 60 * 60 * 1000;
/** However much it is used. */
export const SESSION_DAYS = 30;
/** When it is not used. */
const IDLE_DAYS = 14;
export const LINK_DAYS = 7;

/** 256 bits that cannot be guessed; only the hash is kept. */
export const newToken = (): string => randomBytes(32).toString('base64url');
export const hashOf = (token: string): Uint8Array => createHash('sha256').update(token).digest();
export const inDays = (now: Date, days: number): Date => new Date(now.getTime() + days * DAY);

/** Until when a sign-in holds that was begun and last used then. */
export const holdsUntil = (begun: Date, used: Date): Date => new Date(Math.min(inDays(begun, SESSION_DAYS).getTime(), inDays(used, IDLE_DAYS).getTime()));

/** An address that signs the person in once, within a week. `ensemble`: whose librarian hands it out. */
export async function makeSignInLink(door: Door, origin: string, person: string, ensemble: string | null, now: Date, more?: LinkMore): Promise<string> {
  const token = newToken();
  await door.addLink(person, hashOf(token), inDays(now, LINK_DAYS), ensemble, more);
  return `${origin}/sign-in?token=${token}${more?.invitation ? '&invited' : ''}`;
}

const MINUTE = 60_000;
/** A link that was asked for by letter. OWASP ASVS 5.0.0, 6.5.5: no longer than ten. */
export const LETTER_MINUTES = 10;

export async function makeAskedLink(door: Door, origin: string, person: string, now: Date): Promise<string> {
  const token = newToken();
  await door.addLink(person, hashOf(token), new Date(now.getTime() + LETTER_MINUTES * MINUTE), null);
  return `${origin}/sign-in?token=${token}`;
}
