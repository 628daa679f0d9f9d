import type { PartView, WorkView } from '../../../core/agreement/wire/http.ts';
import { seatsFor } from '../../../core/music/seat.ts';
import type { LogEntry } from '../../../core/agreement/event.ts';
import { demoScore } from '../../../server/demo/score/writeScore.ts';

export interface SignedIn {
  id: string;
  name: string;
  cookie: string;
}

/** Somebody at the HTTP face of a server that may be away: asks until it answers. Of several servers each attempt may ask another. */
export function caller(address: string | (() => string), cookie: string) {
  const at = typeof address === 'string' ? () => address : address;
  async function call<T>(method: string, path: string, body?: unknown): Promise<T> {
    const payload = body === undefined || body instanceof FormData ? {} : { headers: { 'content-type': 'application/json' } };
    const init = { method, headers: { cookie, ...payload.headers }, ...(body === undefined ? {} : { body: body instanceof FormData ? body : JSON.stringify(body) }) };
    for (;;) {
      const reply = await fetch(`${at()}${path}`, { ...init, signal: AbortSignal.timeout(15_000) }).catch(() => null);
      if (reply && reply.status < 500) return (await reply.json()) as T;
      await new Promise((resolve) => setTimeout(resolve, 100));
    }
  }
  return call;
}

export async function signIn(address: string, link: string): Promise<SignedIn> {
  const token = new URL(link).searchParams.get('token');
  const reply = await fetch(`${address}/api/sign-in`, { method: 'POST', headers: { 'content-type': 'application/json' }, body: JSON.stringify({ token }), signal: AbortSignal.timeout(15_000) });
  const { id, name } = (await reply.json()) as { id: string; name: string };
  return { id, name, cookie: reply.headers.getSetCookie()[0]?.split(';')[0] ?? '' };
}

export interface Furnished {
  people: SignedIn[];
  section: string;
  seating: { seats: { seat: string; person: string | null }[]; principal: string };
  views: PartView[][];
}

/** A section of seven and its librarian, with two parts of one score on their stands. Who leads comes first, the librarian last. */
export async function furnish(address: string, link: string): Promise<Furnished> {
  const librarian = await signIn(address, link);
  const call = caller(address, librarian.cookie);
  const section = await call<{ id: string }>('POST', '/api/sections', { name: 'First violins', instrument: 'violin' });
  const players: SignedIn[] = [];
  for (const name of ['Ilya Brandt', 'Mona Castell', 'Jon Ferrow', 'Ada Grell', 'Nils Hovden', 'Rita Ionesco', 'Sam Jarvis']) {
    const added = await call<{ link: string }>('POST', '/api/people', { name });
    players.push(await signIn(address, added.link));
  }
  const seating = { seats: seatsFor(7).map((seat, index) => ({ seat, person: players[index]!.id })), principal: players[0]!.id };
  await call('PUT', `/api/sections/${section.id}/seating`, seating);
  const programme = await call<{ id: string }>('POST', '/api/programmes', { title: 'History' });
  const form = new FormData();
  form.set('file', new Blob([demoScore()]), 'history.musicxml');
  const { work } = await call<{ work: WorkView }>('POST', `/api/programmes/${programme.id}/works`, form);
  const parts = work.parts.filter((part) => part.instrument === 'violin');
  for (const part of parts) await call('PUT', `/api/parts/${part.id}/section`, { section: section.id });
  const people = [...players, librarian];
  const views = await Promise.all(people.map((person) => Promise.all(parts.map((part) => caller(address, person.cookie)<PartView>('GET', `/api/parts/${part.id}`)))));
  return { people, section: section.id, seating, views };
}

export async function wholeLog(address: string, cookie: string, part: string): Promise<LogEntry[]> {
  const rows: LogEntry[] = [];
  for (;;) {
    const { head, entries } = await caller(address, cookie)<{ head: number; entries: LogEntry[] }>('GET', `/api/parts/${part}/log?after=${rows.length}`);
    rows.push(...entries);
    if (rows.length >= head || entries.length === 0) return rows;
  }
}
