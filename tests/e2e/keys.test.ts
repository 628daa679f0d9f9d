import type { Browser, Locator, Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import type { PartView, Shelf } from '../../core/agreement/wire/http.ts';
import { startBrowser } from '../support/browser.ts';
import { openHouse, type House } from './house.ts';
import { Player } from './player.ts';
import { Reader, signIn } from './reader.ts';

const PATIENT = { timeout: 240_000 };
const WHY = 'Under one hand, on one string.';
const MEASURE = '18';

let house: House, browser: Browser, reader: Reader, part: PartView, shelf: Shelf;
const faults: string[] = [];
const at = {} as Record<'Marek Dvorsin' | 'Celia Vantongel' | 'Ilse Tarnow', Player>;

/** What has the focus: its name, and whether it can be seen to have it. */
const focus = (page: Page) =>
  page.evaluate(() => {
    const { activeElement: on } = document;
    const style = on ? getComputedStyle(on) : null;
    return { name: on?.getAttribute('aria-label') ?? on?.textContent?.trim() ?? '', seen: style !== null && style.outlineStyle !== 'none' && parseFloat(style.outlineWidth) >= 2 };
  });

/** Tab by tab to something by its name; every stop on the way is seen. */
async function tabTo(page: Page, wanted: string | RegExp): Promise<void> {
  for (let i = 0; i < 120; i++) {
    await page.keyboard.press('Tab');
    const { name, seen } = await focus(page);
    if (name) expect(seen, name).toBe(true);
    if (typeof wanted === 'string' ? name === wanted : wanted.test(name)) return;
  }
  throw new Error(`${String(wanted)} is not reached by Tab.`);
}

beforeAll(async () => {
  [house, browser] = await Promise.all([openHouse(true), startBrowser()]);
  const librarian = await browser.newContext();
  await signIn(await librarian.newPage(), house.links.get('librarian')!);
  reader = new Reader(librarian, house.origin);
  shelf = await reader.shelf();
  part = await reader.part((await reader.work('Low Water')).parts[0]!.id);
  for (const name of ['Marek Dvorsin', 'Celia Vantongel', 'Ilse Tarnow'] as const) {
    const context = await browser.newContext({ viewport: { width: 1440, height: 900 } });
    const page = await context.newPage();
    page.setDefaultTimeout(60_000);
    page.on('pageerror', (fault) => faults.push(`${name}: ${fault.message}`));
    at[name] = new Player(page, house.origin);
  }
}, 240_000);

afterAll(async () => {
  await browser?.close();
  await house?.stop();
});

async function arrive(name: keyof typeof at): Promise<void> {
  const { page } = at[name];
  await page.goto(await reader.linkFor(shelf.people.find((one) => one.name === name)!.id));
  await page.getByRole('link', { name: shelf.programmes[0]!.title }).waitFor();
  await tabTo(page, shelf.programmes[0]!.title);
  await page.keyboard.press('Enter');
  await page.locator('footer').getByRole('status').filter({ hasText: 'Low Water, The Crossing, Violin I.' }).waitFor();
  await tabTo(page, /^Low Water, The Crossing, Violin I:/);
  await page.keyboard.press('Enter');
  await page.locator('main [data-note]').first().waitFor({ timeout: 120_000 });
}

const status = (name: keyof typeof at): Locator => at[name].page.locator('footer').getByRole('status');

describe('three people with a keyboard each', PATIENT, () => {
  it('come from their sign-in links to the same stand, and see at every step what has the focus', async () => {
    for (const name of Object.keys(at) as (keyof typeof at)[]) await arrive(name);
    await at['Ilse Tarnow'].page.getByText('3 of 12 here').waitFor();
  });

  it('one takes a passage in hand, writes a string on it and lays the slip', async () => {
    const marek = at['Marek Dvorsin'];
    await marek.goTo(MEASURE);
    await marek.press('Shift+ArrowRight', 'Shift+ArrowRight', 'Shift+Digit2');
    await marek.lay(WHY);
    await status('Marek Dvorsin').filter({ hasText: 'laid' }).waitFor();
    const notes = part.part.measures.find(({ number }) => number === MEASURE)!.notes.filter(({ rest }) => !rest).map(({ id }) => id);
    const laid = () => reader.part(part.id).then(({ state }) => Object.values(state.proposals).filter((slip) => slip.why === WHY));
    await expect.poll(async () => (await laid()).map(({ marks }) => marks.map(({ note }) => note))).toEqual([notes.slice(0, 3)]);
  });

  it('another hears where she is, which slip hangs there and what it says, votes, and hears her vote', async () => {
    const celia = at['Celia Vantongel'];
    await celia.goTo(MEASURE);
    await celia.press('Enter');
    await status('Celia Vantongel').filter({ hasText: `Slip ${MEASURE}a by Marek Dvorsin: 0 for, 0 against; your vote is open. ${WHY}` }).waitFor();
    await celia.press('+');
    await status('Celia Vantongel').filter({ hasText: `You are for ${MEASURE}a.` }).waitFor();
    await status('Celia Vantongel').filter({ hasText: `Slip ${MEASURE}a by Marek Dvorsin: 1 for, 0 against; you are for it.` }).waitFor();
    await celia.press('s');
    expect((await focus(celia.page)).name).toBe('');
    await celia.page.keyboard.type('It lies well.');
    await celia.press('Enter');
    await celia.slip(WHY).getByText('It lies well.').waitFor();
  });

  it('the open measure is a region with its slips as articles, its votes as pressed buttons and a picture with words, and the ledge is a polite live region', async () => {
    const { page } = at['Celia Vantongel'];
    const region = page.getByRole('region', { name: `Measure ${MEASURE}`, exact: true });
    const article = region.getByRole('article', { name: `Slip ${MEASURE}a by Marek Dvorsin` });
    expect(await article.ariaSnapshot()).toMatch(
      new RegExp([`- heading "${MEASURE}a Marek Dvorsin[^"]*" \\[level=3\\]`, `- paragraph: ${WHY}`, '- img "1 for, 0 against[^"]*"', '- button "for[^"]*" \\[pressed\\]', '- button "against[^"]*"', '[^]*Celia Vantongel[^]*It lies well.', '- button "say something"'].join('[^]*')),
    );
    expect(await region.getByRole('img', { name: `Slip ${MEASURE}a by Marek Dvorsin` }).count()).toBe(1);
    expect(await status('Celia Vantongel').getAttribute('aria-live')).toBe('polite');
  });

  it('the principal comes to it with n, and inks it in with Enter', async () => {
    const ilse = at['Ilse Tarnow'];
    await ilse.goTo('16');
    await ilse.press('n');
    await ilse.slip(WHY).getByText('It lies well.').waitFor();
    await ilse.press('Enter');
    const first = part.part.measures.find(({ number }) => number === MEASURE)!.notes.find(({ rest }) => !rest)!.id;
    for (const player of Object.values(at)) await player.page.locator(`main .system [data-on="${first}"][data-mark="string:2"][data-state="adopted"]`).waitFor();
  });

  it('the row of signs and the pencils are one stop each, walked by arrows that do not move the note in hand', async () => {
    const { page, press } = { page: at['Marek Dvorsin'].page, press: (...keys: string[]) => at['Marek Dvorsin'].press(...keys) };
    const inHand = () => page.locator('main .hits [aria-pressed="true"]').first().getAttribute('data-note');
    const before = await inHand();
    await tabTo(page, /^open string/);
    await press('ArrowRight');
    expect((await focus(page)).name).toMatch(/^finger 1/);
    await press('Tab');
    expect((await focus(page)).name).toBe('propose');
    await press('ArrowRight');
    await page.getByRole('radio', { name: 'for me alone', checked: true }).waitFor();
    expect(await inHand()).toBe(before);
    await press('ArrowLeft');
  });

  it('who writes from a button by keyboard is back on it afterwards', async () => {
    const celia = at['Celia Vantongel'];
    await celia.press('n');
    await tabTo(celia.page, 'say something');
    await celia.press('Enter');
    await celia.page.getByLabel(/Say something/).waitFor();
    await celia.press('Escape');
    expect((await focus(celia.page)).name).toBe('say something');
  });

  it('no page met a fault', () => {
    expect(faults).toEqual([]);
  });
});
