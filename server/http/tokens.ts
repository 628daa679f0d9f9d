import { createHash, randomBytes } from 'node:crypto';
import type { Door } from '../store/door.ts';

const DAY = 24 * 60 * 60 * 1000;
export const SESSION_DAYS = 30;
const LINK_DAYS = 7;

/** 256 bits that cannot be guessed; only the hash is kept. */
export const newToken = (): string => randomBytes(32).toString('base64url');
export const hashOf = (token: string): Uint8Array => createHash('sha256').update(token).digest();
export const inDays = (now: Date, days: number): Date => new Date(now.getTime() + days * DAY);

/** An address that signs the person in once, within a week. `ensemble`: whose librarian hands it out. */
export async function makeSignInLink(door: Door, origin: string, person: string, ensemble: string | null, now: Date): Promise<string> {
  const token = newToken();
  await door.addLink(person, hashOf(token), inDays(now, LINK_DAYS), ensemble);
  return `${origin}/sign-in?token=${token}`;
}
