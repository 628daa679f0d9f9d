import { randomUUID } from 'node:crypto';
import type { APIRequestContext, BrowserContext } from 'playwright-core';
import type { PartView, ProgrammeView, WorkView } from '../../core/agreement/wire/http.ts';
import type { KeptSetView } from '../../core/archive/keptSet.ts';
import type { Mark } from '../../core/music/mark.ts';
import { demoScore } from '../../server/demo/score/writeScore.ts';
import { scoreText, note } from '../support/scoreText.ts';
import { correctedScore } from './correctedScore.ts';
import { Reader } from './reader.ts';

const TITLE = 'Low Water, new edition';
const DAY_MS = 86_400_000;
const inDays = (days: number): string => new Date(Date.now() + days * DAY_MS).toISOString().slice(0, 10);

type Files = Record<string, string>;

/** Asks as one of those who are signed in, and stands for their word. */
class Asking {
  readonly #request: APIRequestContext;
  readonly #origin: string;

  constructor({ request }: BrowserContext, origin: string) {
    this.#request = request;
    this.#origin = origin;
  }

  async ask<T>(method: 'POST' | 'PUT', path: string, data: unknown, may = [200, 201, 204]): Promise<T> {
    const answer = await this.#request.fetch(`${this.#origin}/api${path}`, { method, data, headers: { origin: this.#origin } });
    if (!may.includes(answer.status())) throw new Error(`${method} ${path}: ${answer.status()} ${await answer.text()}`);
    return (answer.status() === 204 ? null : await answer.json()) as T;
  }

  /** Lays files; whether they are taken is for whoever asks to see. */
  async lay(path: string, files: Files, headers: Record<string, string> = {}): Promise<void> {
    const form = new FormData();
    for (const [name, text] of Object.entries(files)) form.append('file', new File([text], name, { type: 'application/xml' }));
    await this.#request.post(`${this.#origin}/api${path}`, { multipart: form, headers: { origin: this.#origin, ...headers } });
  }

  operate(part: string, name: string, input: unknown): Promise<unknown> {
    return this.ask('POST', `/parts/${part}/operations/${name}`, { operation: randomUUID(), input });
  }

  /** A mark for some or all, proposed and inked in. */
  async ink(part: string, measure: number, mark: Mark, seats: unknown, why: string): Promise<void> {
    const id = randomUUID();
    await this.operate(part, 'propose', { id, from: measure, to: measure, seats, why, marks: [mark] });
    await this.operate(part, 'adopt', { proposal: id, revision: 1, why: '' });
  }
}

/** The first measure from here on with a note in it, and that note. */
function noteFrom({ part }: PartView, ordinal: number): { measure: number; note: string } {
  const measure = part.measures.find((one) => one.ordinal >= ordinal && one.notes.some(({ rest }) => !rest))!;
  return { measure: measure.ordinal, note: measure.notes.find(({ rest }) => !rest)!.id };
}

/** What a house holds after a season: marks put by, a programme with days, a deputy and a moved desk, a corrected edition in it, wrong notes, parts that went out and were changed. */
export interface Season {
  programme: string;
  /** The part that was corrected and changed. */
  part: string;
}

async function corrected(librarian: Asking, reader: Reader, work: WorkView): Promise<void> {
  const { id } = work.parts[0]!;
  await librarian.lay(`/works/${work.id}/editions`, { 'corrected.musicxml': correctedScore(await reader.text(`/parts/${id}/source`), await reader.part(id)).text });
}

async function wentOutAndChanged(principal: Asking, reader: Reader, part: string): Promise<void> {
  await principal.operate(part, 'moveOn', { stage: 'onStands' });
  const view = await reader.part(part);
  const [first, second] = [noteFrom(view, 9), noteFrom(view, 20)];
  await principal.ink(part, first.measure, { note: first.note, value: { kind: 'text', text: 'very light' } }, ['1i', '3o', '3i'], 'The conductor asks for it.');
  await principal.ink(part, second.measure, { note: second.note, value: { kind: 'bow', bow: 'up' } }, 'all', 'As the violas have it.');
}

/** A season goes by in a house with the demo in it. */
export async function passSeason(origin: string, contexts: Record<'librarian' | 'principal', BrowserContext>): Promise<Season> {
  const reader = new Reader(contexts.librarian, origin);
  const [librarian, principal] = [new Asking(contexts.librarian, origin), new Asking(contexts.principal, origin)];
  const first = await reader.work('Low Water');
  const keep = (season: string, conductor: string) => librarian.ask<KeptSetView[]>('POST', `/works/${first.id}/keep`, { ensemble: 'Varnholm Strings', conductor, season });
  await keep('2024/25', 'Osric Vane');
  const sets = await keep('2025/26', 'Marta Lindqvale');
  const days = [['rehearsal', 9, '10:00', 'Hall 2'], ['rehearsal', 10, '10:00', 'Hall 2, strings alone'], ['rehearsal', 12, '19:00', 'on the platform'], ['concert', 13, '19:30', 'Great Hall']];
  const { id: programme } = await librarian.ask<ProgrammeView>('POST', '/programmes', {
    title: 'Thaw', season: '2026/27', conductor: 'Vera Lindqvist', days: days.map(([kind, at, time, words]) => ({ kind, date: inDays(at as number), time, words })), deadlines: { withPrincipal: inDays(-4), roundSection: inDays(1), inkedIn: inDays(4), printed: inDays(6), onStands: inDays(7) },
  });
  await librarian.lay(`/programmes/${programme}/works`, { 'new-edition.musicxml': demoScore().replace(/<work-title>[^<]*</, `<work-title>${TITLE}<`) });
  const work = await reader.work(TITLE);
  const part = work.parts[0]!.id;
  await principal.ask('POST', `/works/${work.id}/bring-in`, { id: randomUUID(), set: sets.find(({ season }) => season === '2025/26')!.id, ink: true });
  await corrected(librarian, reader, work);
  await wentOutAndChanged(principal, reader, part);
  for (const [ordinal, says, should] of [[5, 'f natural', 'f sharp'], [31, 'a slur over four notes', 'a slur over eight, as in the violas']]) await principal.ask('POST', `/parts/${part}/errata`, { measure: ordinal, says, should });
  const section = (await reader.shelf()).sections.find(({ name }) => name === 'Violin I')!;
  const { person: deputy } = await librarian.ask<{ person: { id: string } }>('POST', '/people', { name: 'Jon Ferrow' });
  await librarian.ask('PUT', `/programmes/${programme}/sections/${section.id}/seating`, { seats: section.seats.map(({ seat, person }) => ({ seat, person: seat === '2o' ? deputy.id : (person?.id ?? null) })), principal: section.principal?.id ?? null });
  return { programme, part };
}

/** A librarian sends three files as one work, of which one is torn and one has no string part. */
export async function sendTorn(origin: string, librarian: BrowserContext, programme: string): Promise<void> {
  const bar = note('C5', 16);
  const files = { 'dune-violin-1.xml': scoreText([bar], { name: 'Violin I' }), 'dune-viola.xml': scoreText([bar]).replace('</note>', '</nota>'), 'dune-oboe.xml': scoreText([bar], { name: 'Oboe' }) };
  await new Asking(librarian, origin).lay(`/programmes/${programme}/works`, files, { prefer: 'respond-async' });
}
