import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import type { APIRequestContext, Browser, BrowserContext } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import type { PartView } from '../../core/agreement/wire/http.ts';
import { seatsFor } from '../../core/music/seat.ts';
import { openFile } from '../../server/files/openFile.ts';
import { startBrowser } from '../support/browser.ts';
import { misplaced } from './engraved.ts';
import { added, owedSigns, signsOf } from './exported.ts';
import { openHouse, type House } from './house.ts';
import { Player } from './player.ts';
import { Reader, signIn } from './reader.ts';

const FILE = join(process.env.CORPUS_DIR ?? '', 'scores/openscore-orchestra/Haydn_104_1.mxl');
const SEATS = seatsFor(16);
const WHY = 'Fourth finger: the open string would ring into the rest.';

async function ask<Answer>(request: APIRequestContext, method: 'post' | 'put', address: string, options: Parameters<APIRequestContext['post']>[1]): Promise<Answer> {
  const answer = await request[method](address, options);
  if (!answer.ok()) throw new Error(`${address}: ${answer.status()} ${await answer.text()}`);
  return (await answer.json()) as Answer;
}

describe.skipIf(!process.env.CORPUS_DIR)('a real first violin part, eight desks (needs CORPUS_DIR)', { timeout: 240_000 }, () => {
  let house: House, browser: Browser, librarian: BrowserContext, principal: Player, player: Player, reader: Reader, part: PartView;
  const note = (measure: string, nth: number): string => part.part.measures.find(({ number }) => number === measure)!.notes.find(({ index }) => index === nth - 1)!.id;

  async function comeIn(link: string): Promise<Player> {
    const page = await (await browser.newContext({ viewport: { width: 1440, height: 900 } })).newPage();
    page.setDefaultTimeout(40_000);
    await signIn(page, link);
    return new Player(page, house.origin);
  }

  beforeAll(async () => {
    house = await openHouse(false);
    browser = await startBrowser();
    librarian = await browser.newContext();
    await signIn(await librarian.newPage(), house.links.get('librarian')!);
    const { request } = librarian;
    const api = `${house.origin}/api`;
    const people: { person: { id: string }; link: string }[] = [];
    for (const seat of SEATS) people.push(await ask(request, 'post', `${api}/people`, { data: { name: `Player of ${seat}` } }));
    const section = await ask<{ id: string }>(request, 'post', `${api}/sections`, { data: { name: 'Violin I', instrument: 'violin' } });
    const seats = SEATS.map((seat, i) => ({ seat, person: people[i]!.person.id }));
    await ask(request, 'put', `${api}/sections/${section.id}/seating`, { data: { seats, principal: people[0]!.person.id } });
    const programme = await ask<{ id: string }>(request, 'post', `${api}/programmes`, { data: { title: 'A symphony evening' } });
    const file = { name: 'Haydn_104_1.mxl', mimeType: 'application/vnd.recordare.musicxml', buffer: readFileSync(FILE) };
    await ask(request, 'post', `${api}/programmes/${programme.id}/works`, { multipart: { file } });
    reader = new Reader(librarian, house.origin);
    part = await reader.part((await reader.work('Symphony')).parts.find(({ section: on }) => on?.name === 'Violin I')!.id);
    [principal, player] = [await comeIn(people[0]!.link), await comeIn(people[5]!.link)];
    await Promise.all([principal.stand(part.id), player.stand(part.id)]);
  }, 240_000);

  afterAll(async () => {
    await browser?.close();
    await house?.stop();
  });

  it('stands on the page note for note, and every note can be touched', async () => {
    expect(part.part.measures).toHaveLength(295);
    await expect.poll(() => misplaced(principal.page, part.part), { timeout: 60_000 }).toEqual([]);
  });

  it('is fingered by the principal, voted on by a player and inked in', async () => {
    await principal.goTo('4');
    await principal.press('4', 'd');
    await principal.lay(WHY);
    await player.goTo('4');
    await player.press('Enter');
    await player.slip(WHY).waitFor();
    await player.press('+');
    await principal.press('Enter');
    await principal.slip(WHY).getByRole('img', { name: /^1 for, 0 against/ }).waitFor();
    await principal.press('Enter');
    await player.mark(note('4', 1), 'finger:4', 'adopted').waitFor();
  });

  it('shows, while it is typed, that two partners would change bow together inside a slur', async () => {
    await principal.press('Escape');
    await principal.goTo('12');
    await principal.press('ArrowRight', 'ArrowDown', 'ArrowDown', 'ArrowDown', 'c');
    await principal.lay('The outside player of desk 2 changes on the C.');
    await principal.press('Enter', 'Enter', 'Escape');
    await principal.page.locator('main [data-mark^="change"][data-state="adopted"]').first().waitFor();
    await principal.press('ArrowDown', 'c');
    await principal.page.locator('main .marks [data-finding="desk/partners-change-together"]').first().waitFor();
    await principal.press('z');
    await principal.page.locator('main .marks [data-finding="desk/partners-change-together"]').first().waitFor({ state: 'detached' });
  });

  it('is given out with exactly the marks inked in, for the section and for the seat that changes', async () => {
    const view = await reader.part(part.id);
    const text = async (path: string): Promise<string> => reader.text(`/parts/${part.id}/${path}`);
    const plain = signsOf(await text('export?for=8i&form=musicxml'), view.part.id);
    const source = await openFile(readFileSync(FILE), 'Haydn_104_1.mxl');
    if (!source.ok) throw new Error(source.fault.text);
    const before = signsOf(source.text, view.part.id);
    expect(added(before, plain).sort()).toEqual(owedSigns(view.state, view.part, '8i').sort());
    const seat = signsOf(await text('export?for=2o&form=musicxml'), view.part.id);
    expect(added(before, seat).sort()).toEqual(owedSigns(view.state, view.part, '2o').sort());
    expect(added(plain, seat)).toHaveLength(1);
  });
});
