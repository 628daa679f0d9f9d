import { mkdirSync } from 'node:fs';
import { join } from 'node:path';
import type { Browser, BrowserContext, Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { startBrowser } from '../support/browser.ts';
import { chance } from '../support/chance.ts';
import { longPart } from '../support/longPart.ts';
import { partXml } from '../support/partXml.ts';
import { note, scoreText } from '../support/scoreText.ts';
import { seriousViolations } from './axe.ts';
import { openHouse, type House } from './house.ts';
import { Librarian } from './librarian.ts';
import { Reader, signIn } from './reader.ts';

const PATIENT = { timeout: 240_000 };
const PICTURES = process.env.BOWLINE_PICTURES;
const BAR = note('C5', 16);
/** Long enough that it can be seen on its way and stopped. */
const LONG = partXml(longPart(6000, chance(1)), 'Long Tide');

let house: House, browser: Browser, context: BrowserContext, page: Page, librarian: Librarian, reader: Reader;

beforeAll(async () => {
  [house, browser] = await Promise.all([openHouse(true), startBrowser()]);
  context = await browser.newContext({ viewport: { width: 1440, height: 900 } });
  page = await context.newPage();
  page.setDefaultTimeout(60_000);
  await signIn(page, house.links.get('librarian')!);
  librarian = new Librarian(page, house.origin);
  reader = new Reader(context, house.origin);
  await librarian.folder('Tide Tables');
}, 240_000);

afterAll(async () => {
  await browser?.close();
  await house?.stop();
});

const choose = (word: string, files: Record<string, string>) =>
  page.getByLabel(word, { exact: true }).setInputFiles(Object.entries(files).map(([name, text]) => ({ name, mimeType: 'application/xml', buffer: Buffer.from(text) })));
const says = (text: string | RegExp) => librarian.sentence().filter({ hasText: text }).waitFor();
const onTheWay = () => page.getByRole('region', { name: 'On the way into the folder' });
async function picture(name: string): Promise<void> {
  if (!PICTURES) return;
  mkdirSync(PICTURES, { recursive: true });
  for (const [width, height] of [[1440, 900], [1024, 1366], [390, 844]] as const) {
    await page.setViewportSize({ width, height });
    await page.screenshot({ path: join(PICTURES, `${name}-${width}.png`) });
  }
  await page.setViewportSize({ width: 1440, height: 900 });
}

describe('scores come into a folder', PATIENT, () => {
  it('several files are one work, where the librarian says so', async () => {
    await choose('lay a score', { 'sea-v1.xml': scoreText([BAR], { name: 'Violin I' }), 'sea-va.xml': scoreText([BAR, BAR], { name: 'Viola' }) });
    await says('Two files: are they one work');
    await picture('one-or-many');
    await librarian.press('one work');
    await says('two string parts');
    const work = await reader.work('sea-v1');
    expect(work.parts.map(({ name, section }) => [name, section?.name])).toEqual([['Violin I', 'Violin I'], ['Viola', 'Viola']]);
  });

  it('a part that comes later is added to the work in hand', async () => {
    await librarian.choose('sea-v1', 'Viola');
    await choose('add parts to this work', { 'sea-vc.xml': scoreText([BAR], { name: 'Violoncello' }) });
    await says('has three parts now');
    expect((await reader.work('sea-v1')).parts.map(({ name }) => name)).toEqual(['Violin I', 'Viola', 'Violoncello']);
  });

  it('where one of several cannot be read, all are told of and none is kept', async () => {
    const before = await reader.shelf();
    await choose('lay a score', { 'dune-v1.xml': scoreText([BAR], { name: 'Violin I' }), 'dune-torn.xml': scoreText([BAR]).replace('</note>', '</nota>'), 'dune-ob.xml': scoreText([BAR], { name: 'Oboe' }) });
    await librarian.press('one work');
    await onTheWay().getByText('None of the 3 files').waitFor();
    expect(await onTheWay().locator('li li').allInnerTexts()).toEqual([expect.stringMatching(/dune-v1.xml could be read: Violin I/), expect.stringMatching(/dune-torn.xml.*line \d/), expect.stringMatching(/dune-ob.xml.*"Oboe"/)]);
    expect(await seriousViolations(page)).toEqual([]);
    await picture('none-of-three');
    await onTheWay().getByRole('button', { name: 'Put away' }).click();
    await onTheWay().waitFor({ state: 'detached' });
    expect(await reader.shelf()).toEqual(before);
  });

  it('a long one is seen on its way and stopped, and nothing of it is there', async () => {
    await choose('lay a score', { 'long.xml': LONG });
    const staff = onTheWay().getByRole('img', { name: /of \d done/ });
    await staff.waitFor();
    await picture('on-the-way');
    await onTheWay().getByRole('button', { name: /^Stop/ }).click();
    await says('long.xml: stopped.');
    await onTheWay().waitFor({ state: 'detached' });
    expect((await reader.shelf()).programmes.flatMap(({ works }) => works.map(({ title }) => title))).not.toContain('Long Tide');
  });
});
