import { randomUUID } from 'node:crypto';
import type { Browser, BrowserContext, Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { startBrowser } from '../support/browser.ts';
import { seriousViolations } from './axe.ts';
import { openHouse, type House } from './house.ts';
import { Librarian } from './librarian.ts';
import { Player } from './player.ts';
import { Reader, signIn } from './reader.ts';

const DEPUTY = 'Jon Ferrow';
const SIZES = [[1440, 900], [1024, 1366], [390, 844]] as const;
const PATIENT = { timeout: 240_000 };

/** A picture beside the others, where one is wanted. */
async function picture(page: Page, name: string): Promise<void> {
  const folder = process.env.BOWLINE_PICTURES;
  if (folder) await page.screenshot({ path: `${folder}/${name}.png` });
}

describe('a programme from its days to the last change', PATIENT, () => {
  let house: House, browser: Browser, librarian: Librarian, reader: Reader;
  const contexts = new Map<string, BrowserContext>();
  const faults: string[] = [];

  async function enter(who: string, link: string): Promise<Page> {
    const context = await browser.newContext({ viewport: { width: 1440, height: 900 }, reducedMotion: 'reduce' });
    contexts.set(who, context);
    const page = await context.newPage();
    page.setDefaultTimeout(60_000);
    page.on('pageerror', (fault) => faults.push(`${who} ${String(fault)}`));
    await page.addInitScript(() => (window.print = () => document.body.setAttribute('data-printed', 'yes')));
    await signIn(page, link);
    return page;
  }

  const ask = async (who: string, part: string, name: string, input: unknown) => {
    const answer = await contexts.get(who)!.request.post(`${house.origin}/api/parts/${part}/operations/${name}`, { data: { operation: randomUUID(), input }, headers: { origin: house.origin } });
    expect([name, answer.status()]).toEqual([name, 200]);
  };

  beforeAll(async () => {
    house = await openHouse(true);
    browser = await startBrowser();
    librarian = new Librarian(await enter('librarian', house.links.get('librarian')!), house.origin);
    reader = new Reader(contexts.get('librarian')!, house.origin);
  }, 240_000);

  afterAll(async () => {
    await browser?.close();
    await house?.stop();
  });

  it('a librarian puts a programme on the shelf, and gives it another rehearsal with its hour and its hall', async () => {
    const { page } = librarian;
    await page.goto(`${house.origin}/shelf`);
    const form = page.locator('form').filter({ hasText: 'A new programme' });
    await form.getByLabel('Title').fill('Thaw');
    await form.getByLabel('Season').fill('2026/27');
    await form.getByLabel('Conductor').fill('Vera Lindqvist');
    await form.getByLabel('First rehearsal').fill('2027-03-29');
    await form.getByLabel('Concert').fill('2027-04-02');
    await form.getByRole('button', { name: 'put on the shelf' }).click();
    await page.getByRole('link', { name: 'Thaw' }).click();
    await page.getByRole('button', { name: 'The programme, its days and deadlines' }).click();
    expect(await page.getByLabel('on the stands, day').inputValue()).toBe('2027-03-15');
    await page.getByRole('button', { name: 'one more rehearsal' }).click();
    await page.getByLabel('rehearsal 2, time').fill('10:00');
    await page.getByLabel('rehearsal 2, where, what for').fill('Hall 2');
    await page.getByLabel('inked in, day').fill('2027-03-01');
    expect(await seriousViolations(page)).toEqual([]);
    await picture(page, 'folder-days');
    await page.getByRole('button', { name: 'keep these' }).click();
    await librarian.sentence().filter({ hasText: 'Thaw is kept.' }).waitFor();
    await page.getByText('rehearsal 30 March 2027, 10:00, Hall 2').waitFor();
    const kept = (await reader.shelf()).programmes.find(({ title }) => title === 'Thaw')!;
    expect([kept.conductor, kept.days.map(({ date }) => date), kept.deadlines]).toEqual(['Vera Lindqvist', ['2027-03-29', '2027-03-30', '2027-04-02'], { inkedIn: '2027-03-01' }]);
  });

  it('sees in the folder what is late and who is waited for', async () => {
    const { page } = librarian;
    await librarian.folder('Tide Tables');
    const late = page.getByRole('region', { name: 'What is late' });
    await late.getByText(/Viola, Low Water.*: with the principal by .*, 3 days late\. It waits for Maud Ellingrath\./).waitFor();
    expect(await page.locator('[data-stage="pulled"] .late .inline-specs').count()).toBe(3);
    expect(await late.getByText(/Violin I, Low Water.*: inked in by .*, due in 6 days\./).count()).toBe(1);
    for (const [width, height] of SIZES) {
      await page.setViewportSize({ width, height });
      await late.scrollIntoViewIfNeeded();
      expect([width, await page.evaluate(() => document.documentElement.scrollWidth <= innerWidth), await seriousViolations(page)]).toEqual([width, true, []]);
      await picture(page, `folder-late-${width}`);
    }
    await page.setViewportSize({ width: 1440, height: 900 });
    await page.goto(`${house.origin}/shelf`);
    await page.getByText('3 parts are late').waitFor();
    await picture(page, 'shelf-late');
  });

  it('seats a deputy for this programme; the deputy plays there and whoever is away does not', async () => {
    const { page } = librarian;
    const { origin } = house;
    const { person, link } = (await (await contexts.get('librarian')!.request.post(`${origin}/api/people`, { data: { name: DEPUTY }, headers: { origin } })).json()) as { person: { id: string }; link: string };
    await librarian.folder('Tide Tables');
    const seats = page.locator('.seatings .fold').filter({ hasText: 'Violin I ' }).first();
    await seats.locator('.fold-word').click();
    await seats.getByRole('combobox', { name: 'desk 2 outside' }).click();
    await page.getByRole('option', { name: DEPUTY }).click();
    await seats.getByText('1 deputising, 1 away').waitFor();
    await seats.getByText('Away: Celia Vantongel.').waitFor();
    expect(await seriousViolations(page)).toEqual([]);
    await seats.scrollIntoViewIfNeeded();
    await picture(page, 'folder-seating');
    await enter('deputy', link);
    const part = (await reader.work('Low Water')).parts[0]!.id;
    expect(await new Reader(contexts.get('deputy')!, origin).part(part)).toMatchObject({ roles: ['player'], seat: '2o' });
    await seats.getByRole('button', { name: 'move back by one' }).click();
    await librarian.sentence().filter({ hasText: 'Five desks moved back by one' }).waitFor();
    expect((await reader.part(part)).section!.seats.find((place) => place.person?.id === person.id)?.seat).toBe('3o');
  });

  it('a change after the parts went out reaches every desk: on the stand, in the folder, on a slip', async () => {
    const { page } = librarian;
    const { title, parts: [first] } = await reader.work('Low Water');
    const { id, name } = first!;
    await librarian.folder('Tide Tables');
    await librarian.choose(title, name);
    for (const stage of ['inked in', 'printed', 'on the stands']) {
      await librarian.press('move on');
      await librarian.sentence().filter({ hasText: name }).waitFor();
      await page.locator(`[data-part="${id}"] b`).filter({ hasText: stage }).waitFor();
    }
    await page.getByText('Nothing was changed in it since.').waitFor();
    await enter('principal', house.links.get('principal')!);
    const { part } = await reader.part(id);
    const measure = part.measures.find(({ ordinal, notes }) => ordinal > 8 && notes.some(({ rest }) => !rest))!;
    const note = measure.notes.find(({ rest }) => !rest)!;
    const proposal = randomUUID();
    await ask('principal', id, 'propose', { id: proposal, from: measure.ordinal, to: measure.ordinal, seats: ['1i', '3o', '3i'], why: 'The conductor asks for it.', marks: [{ note: note.id, value: { kind: 'text', text: 'very light' } }] });
    await ask('principal', id, 'adopt', { proposal, revision: 1, why: '' });

    const player = new Player(await enter('player', house.links.get('player')!), house.origin);
    await player.stand(id);
    await player.sentence().filter({ hasText: `Since the parts went out: measure ${measure.number}.` }).waitFor();
    await picture(player.page, 'stand-since');

    await page.reload();
    await librarian.choose(title, name);
    const since = page.locator('section.since');
    await since.getByText(/very light/).waitFor();
    expect(await seriousViolations(page)).toEqual([]);
    await since.scrollIntoViewIfNeeded();
    await picture(page, 'folder-since');
    await since.getByRole('button', { name: 'print a slip for each desk' }).click();
    await page.locator('body[data-printed]').waitFor();
    await page.emulateMedia({ media: 'print' });
    const slips = await page.locator('.desk-slips article').allInnerTexts();
    expect(slips.map((text) => /^Desk (\d+)/.exec(text)?.[1])).toEqual(['1', '3']);
    expect([slips[0]!.includes('desk 1 inside'), slips[1]!.includes('inside'), slips.every((text) => text.includes(`Measure ${measure.number}`))]).toEqual([true, false, true]);
    await picture(page, 'slips');
    await page.emulateMedia({ media: 'screen' });
    expect(faults).toEqual([]);
  });
});
