import { networkInterfaces } from 'node:os';
import { makeSignInLink } from './http/tokens.ts';
import type { Settings } from './settings.ts';
import type { Store } from './store/store.ts';

const EVERYWHERE = new Set(['0.0.0.0', '::']);
const named = (host: string): string => (host.includes(':') ? `[${host}]` : host);

/** Addresses that a browser opens, the one on this machine first. */
export function addresses({ host, origin }: Pick<Settings, 'host' | 'origin'>, port: number): string[] {
  if (origin) return [origin];
  if (!EVERYWHERE.has(host)) return [`http://${named(host)}:${port}`];
  const house = Object.values(networkInterfaces()).flatMap((list) => list ?? []).filter((net) => !net.internal && net.family === 'IPv4');
  return [`http://127.0.0.1:${port}`, ...house.map((net) => `http://${net.address}:${port}`)];
}

/** A way in for the librarian; the first start makes one. */
export async function librarianLink(store: Store, address: string, now: Date): Promise<{ role: string; name: string; url: string }> {
  const person = (await store.people.all()).find((one) => one.librarian) ?? (await store.people.add('Librarian', true));
  return { role: 'librarian', name: person.name, url: await makeSignInLink(store, address, person.id, now) };
}
