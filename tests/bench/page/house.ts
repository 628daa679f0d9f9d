import { randomUUID } from 'node:crypto';
import type { APIRequestContext, Browser } from 'playwright-core';
import type { PartView } from '../../../core/agreement/wire/http.ts';
import type { Mark } from '../../../core/music/mark.ts';
import type { Part } from '../../../core/music/part.ts';
import { seatsFor } from '../../../core/music/seat.ts';
import { openHouse, type House } from '../../e2e/house.ts';
import { signIn } from '../../e2e/reader.ts';
import { partXml } from '../../support/partXml.ts';

const SEATS = seatsFor(9);

export interface Laid {
  house: House;
  /** The first player's cookies, to be given to any context. */
  state: Awaited<ReturnType<APIRequestContext['storageState']>>;
  request: APIRequestContext;
  /** Lays a part on the stand and gives its id and what is in it. */
  lay(part: Part, title: string): Promise<PartView>;
  /** Inks marks in, as the principal. */
  ink(part: PartView, marks: readonly Mark[], from: number, to: number): Promise<void>;
}

async function ask<Answer>(request: APIRequestContext, method: 'post' | 'put', address: string, options: Parameters<APIRequestContext['post']>[1]): Promise<Answer> {
  const answer = await request[method](address, { timeout: 600_000, ...options });
  if (!answer.ok()) throw new Error(`${address}: ${answer.status()} ${await answer.text()}`);
  return (await answer.json()) as Answer;
}

/** A real house with a section of nine, and somebody signed in who leads it. */
export async function layHouse(browser: Browser): Promise<Laid> {
  const house = await openHouse(false);
  const api = `${house.origin}/api`;
  const librarian = await browser.newContext();
  await signIn(await librarian.newPage(), house.links.get('librarian')!);
  const people: { person: { id: string }; link: string }[] = [];
  for (const seat of SEATS) people.push(await ask(librarian.request, 'post', `${api}/people`, { data: { name: `Player of ${seat}` } }));
  const section = await ask<{ id: string }>(librarian.request, 'post', `${api}/sections`, { data: { name: 'Violin I', instrument: 'violin' } });
  await ask(librarian.request, 'put', `${api}/sections/${section.id}/seating`, { data: { seats: SEATS.map((seat, i) => ({ seat, person: people[i]!.person.id })), principal: people[0]!.person.id } });
  const programme = await ask<{ id: string }>(librarian.request, 'post', `${api}/programmes`, { data: { title: 'Long evenings' } });
  const principal = await browser.newContext();
  await signIn(await principal.newPage(), people[0]!.link);
  return {
    house,
    state: await principal.storageState(),
    request: principal.request,
    async lay(part, title) {
      const file = { name: `${title}.musicxml`, mimeType: 'application/vnd.recordare.musicxml+xml', buffer: Buffer.from(partXml(part, title)) };
      const laid = await ask<{ work: { parts: { id: string }[] } }>(librarian.request, 'post', `${api}/programmes/${programme.id}/works`, { multipart: { file } });
      const view = await principal.request.get(`${api}/parts/${laid.work.parts[0]!.id}`);
      return (await view.json()) as PartView;
    },
    async ink({ id }, marks, from, to) {
      const proposal = randomUUID();
      const address = (name: string) => `${api}/parts/${id}/operations/${name}`;
      await ask(principal.request, 'post', address('propose'), { data: { operation: randomUUID(), input: { id: proposal, from, to, seats: 'all', why: 'As it was played before.', marks } } });
      await ask(principal.request, 'post', address('adopt'), { data: { operation: randomUUID(), input: { proposal, revision: 1, why: '' } } });
    },
  };
}
