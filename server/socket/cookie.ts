import { cookieName } from '../http/session.ts';

/** Our token among the cookies of a request that no framework has read yet. */
export function cookieOf(header: string | undefined, origin: string | null): string | undefined {
  const start = `${cookieName(origin)}=`;
  return header?.split(';').map((pair) => pair.trim()).find((pair) => pair.startsWith(start))?.slice(start.length);
}
