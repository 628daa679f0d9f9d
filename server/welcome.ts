import { networkInterfaces } from 'node:os';
import type { Hall } from './halls.ts';
import { makeSignInLink } from './http/tokens.ts';
import type { Settings } from './settings.ts';
import type { Door, EnsembleName } from './store/door.ts';

const EVERYWHERE = new Set(['0.0.0.0', '::']);
const named = (host: string): string => (host.includes(':') ? `[${host}]` : host);

/** Addresses that a browser opens, the one on this machine first. */
export function addresses({ host, origin }: Pick<Settings, 'host' | 'origin'>, port: number): string[] {
  if (origin) return [origin];
  if (!EVERYWHERE.has(host)) return [`http://${named(host)}:${port}`];
  const house = Object.values(networkInterfaces()).flatMap((list) => list ?? []).filter((net) => !net.internal && net.family === 'IPv4');
  return [`http://127.0.0.1:${port}`, ...house.map((net) => `http://${net.address}:${port}`)];
}

/** The ensemble that came first; the first start makes one, for its librarian to name. */
export async function firstEnsemble(door: Door): Promise<EnsembleName> {
  const [first] = await door.ensembles();
  // Of several servers that start at once, one makes it and the others find it.
  return first ?? (await door.addEnsemble('Our ensemble')) ?? (await door.ensembles())[0]!;
}

/**
 * A way in for an ensemble's librarian; where there is none yet, somebody is made one. `always` false: for a librarian made just now only. Where several servers
 * share a database what they say is gathered somewhere, and a way in does not lie there again at each start.
 */
export async function librarianLink(door: Door, { ensemble, store }: Hall, address: string, now: Date, always: boolean): Promise<{ role: string; name: string; url: string } | null> {
  const before = (await store.people.all()).find((one) => one.librarian);
  if (before && !always) return null;
  const person = before ?? (await store.people.add('Librarian', true));
  return { role: 'librarian', name: person.name, url: await makeSignInLink(door, address, person.id, ensemble, now) };
}
