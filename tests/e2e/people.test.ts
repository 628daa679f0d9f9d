import { join } from 'node:path';
import type { Browser, BrowserContext, Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { startBrowser } from '../support/browser.ts';
import { openHouse, type House } from './house.ts';
import { Reader, signIn } from './reader.ts';

const DEPUTY = 'Ruth Amberly';
const PICTURES = process.env.BOWLINE_PICTURES;

let house: House;
let browser: Browser;
let librarian: { context: BrowserContext; page: Page; reader: Reader };
let deputy: { context: BrowserContext; page: Page; reader: Reader };

async function enter(link: string, viewport = { width: 1280, height: 800 }) {
  const context = await browser.newContext({ locale: 'en-GB', viewport });
  const page = await context.newPage();
  await signIn(page, link);
  return { context, page, reader: new Reader(context, house.origin) };
}
const says = (page: Page, text: string | RegExp) => page.getByRole('status').filter({ hasText: text }).first().waitFor();
const shelf = (page: Page) => page.goto(`${house.origin}/shelf`);
async function picture(page: Page, name: string): Promise<void> {
  if (PICTURES) await page.screenshot({ path: join(PICTURES, `${name}.png`), fullPage: true });
}

describe('a librarian and the people', { timeout: 120_000 }, () => {
  beforeAll(async () => {
    [house, browser] = await Promise.all([openHouse(true), startBrowser()]);
    librarian = await enter(house.links.get('librarian')!);
  }, 180_000);
  afterAll(async () => {
    await browser.close();
    await house.stop();
  }, 60_000);

  it('adds a deputy, who is offered a seat in a programme and none in a section', async () => {
    const { page, reader } = librarian;
    await shelf(page);
    await page.getByLabel('A new person').fill(DEPUTY);
    await page.getByRole('checkbox', { name: /^deputy/ }).check();
    await page.getByRole('button', { name: 'add', exact: true }).last().click();
    const link = await page.getByLabel(`Sign-in link for ${DEPUTY}; it opens once:`).inputValue();
    const row = page.locator('.people .names li').filter({ hasText: DEPUTY });
    await row.getByText('deputy, in no programme yet').waitFor();
    const { sections, programmes, people } = await reader.shelf();
    const section = page.locator(`[data-fold="${sections[0]!.id}"]`);
    await section.locator('.fold-word').click();
    await section.getByRole('combobox').first().click();
    await page.getByRole('option', { name: people[0]!.name, exact: true }).waitFor();
    expect(await page.getByRole('option', { name: DEPUTY }).count()).toBe(0);
    await page.keyboard.press('Escape');

    const [programme, part] = [programmes[0]!, programmes[0]!.works[0]!.parts.find((one) => one.section?.id === sections[0]!.id)!];
    await page.getByRole('link', { name: programme.title }).click();
    const seats = page.locator('.seatings .fold').filter({ hasText: `${sections[0]!.name} ` }).first();
    await seats.locator('.fold-word').click();
    await seats.getByRole('combobox', { name: 'desk 2 outside' }).click();
    await page.getByRole('option', { name: DEPUTY }).click();
    await seats.getByText('1 deputising').waitFor();
    deputy = await enter(link, { width: 820, height: 1180 });
    expect((await deputy.reader.part(part.id)).seat).toBe('2o');
    await shelf(page);
    await row.getByText(`deputy in ${programme.title}`).waitFor();
    await picture(page, 'people-1280');
  });

  it('the deputy sees that programme alone, and nothing once its last day is over', async () => {
    const [programme] = (await librarian.reader.shelf()).programmes;
    const added = await librarian.context.request.post(`${house.origin}/api/programmes`, { headers: { origin: house.origin }, data: { title: 'Not theirs' } });
    expect(added.ok()).toBe(true);
    await shelf(deputy.page);
    await deputy.page.getByRole('link', { name: programme!.title }).waitFor();
    expect(await deputy.page.getByRole('link', { name: 'Not theirs' }).count()).toBe(0);
    const part = programme!.works[0]!.parts[0]!.id;
    await deputy.page.goto(`${house.origin}/stand/${part}`);
    const days = [{ kind: 'concert', date: '2026-01-05' }];
    const { title, season, conductor } = programme!;
    expect((await librarian.context.request.put(`${house.origin}/api/programmes/${programme!.id}`, { headers: { origin: house.origin }, data: { title, season, conductor, days } })).ok()).toBe(true);
    expect((await deputy.context.request.get(`${house.origin}/api/parts/${part}`)).status()).toBe(404);
    await shelf(deputy.page);
    await deputy.page.getByText('You are here for single programmes, and none of them is on now.').waitFor();
    expect(await deputy.page.getByRole('link', { name: title }).count()).toBe(0);
    await picture(deputy.page, 'deputy-820');
  });

  it('somebody leaves, by keyboard: it is asked once more, said where their seats are, and they stand among those who have left', async () => {
    const { page } = librarian;
    await shelf(page);
    const row = page.locator('.people .names li').filter({ hasText: DEPUTY });
    await row.locator('.fold-word').focus();
    await page.keyboard.press('Enter');
    await row.getByRole('button', { name: 'leaves the ensemble' }).focus();
    await page.keyboard.press('Enter');
    await row.getByText(`${DEPUTY} leaves: their seats are free`).waitFor();
    await page.keyboard.press('Enter');
    await says(page, `${DEPUTY} has left. Their seats are free: look at the sections.`);
    const gone = page.locator('section').filter({ has: page.getByRole('heading', { name: 'Who has left' }) });
    await gone.getByText(DEPUTY).first().waitFor();
    await shelf(deputy.page);
    await deputy.page.getByText(/You do not belong to an ensemble here any more|You are not signed in/).first().waitFor();
    await page.locator('[data-fold="trail"] .fold-word').click();
    await page.getByText(`${DEPUTY} left the ensemble; `).waitFor();
    await page.setViewportSize({ width: 820, height: 1180 });
    await picture(page, 'left-820');
    await gone.locator('.fold-word').click();
    await gone.getByLabel(`Type ${DEPUTY}`).fill(DEPUTY);
    await picture(page, 'erase-820');
    await gone.getByRole('button', { name: 'erase for good' }).click();
    await says(page, 'Erased. The marks stay; the name is gone.');
    await shelf(page);
    await page.locator('[data-fold="trail"] .fold-word').click();
    await page.getByText(/erased somebody who had left/).waitFor();
    expect(await page.getByText(DEPUTY).count()).toBe(0);
  });

  it('takes along what is kept about them as a file', async () => {
    const { page } = librarian;
    const [download] = await Promise.all([page.waitForEvent('download'), page.getByRole('link', { name: 'take it along, as one file' }).click()]);
    expect(download.suggestedFilename()).toBe('what Bowline keeps about me.zip');
  });

  it('calls the ensemble otherwise, and the shelf is headed by that name', async () => {
    const { page } = librarian;
    await page.locator('input[name="ensemble"]').fill('Harbour Strings');
    await page.getByRole('button', { name: 'call it that' }).click();
    await says(page, 'The ensemble is called Harbour Strings now.');
    await page.locator('.head').getByText('Harbour Strings').waitFor();
  });
});
