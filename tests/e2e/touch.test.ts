import type { Browser, Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import type { PartView, Shelf } from '../../core/agreement/wire/http.ts';
import { startBrowser } from '../support/browser.ts';
import { Finger } from './finger.ts';
import { openHouse, type House } from './house.ts';
import { Reader, signIn } from './reader.ts';

const PATIENT = { timeout: 240_000 };
const PART = /^Low Water, The Crossing, Violin I:/;
const PEOPLE = ['Marek Dvorsin', 'Celia Vantongel', 'Ilse Tarnow'] as const;
const SIZES = { tablet: { width: 1024, height: 1366, measure: '18' }, phone: { width: 390, height: 844, measure: '20' } } as const;

let house: House, browser: Browser, reader: Reader, part: PartView, shelf: Shelf;
const faults: string[] = [];

beforeAll(async () => {
  [house, browser] = await Promise.all([openHouse(true), startBrowser()]);
  const librarian = await browser.newContext();
  await signIn(await librarian.newPage(), house.links.get('librarian')!);
  reader = new Reader(librarian, house.origin);
  shelf = await reader.shelf();
  part = await reader.part((await reader.work('Low Water')).parts[0]!.id);
}, 240_000);

afterAll(async () => {
  await browser?.close();
  await house?.stop();
});

const notesOf = (measure: string): string[] => part.part.measures.find(({ number }) => number === measure)!.notes.filter(({ rest }) => !rest).map(({ id }) => id);

async function linkFor(name: string): Promise<string> {
  const person = shelf.people.find((one) => one.name === name)!;
  return reader.linkFor(person.id);
}

describe.each(['tablet', 'phone'] as const)('three people with a finger each, at the size of a %s', PATIENT, (kind) => {
  const { width, height, measure } = SIZES[kind];
  const why = `Under one hand, on the ${kind}.`;
  const at = {} as Record<(typeof PEOPLE)[number], Finger>;
  const pages: Page[] = [];

  beforeAll(async () => {
    for (const name of PEOPLE) {
      const context = await browser.newContext({ viewport: { width, height }, hasTouch: true, isMobile: true });
      const page = await context.newPage();
      page.setDefaultTimeout(60_000);
      page.on('pageerror', (fault) => faults.push(`${kind} ${name}: ${fault.message}`));
      pages.push(page);
      at[name] = new Finger(page);
    }
  }, 240_000);

  afterAll(async () => {
    for (const page of pages) await page.context().close();
  });

  it('open the same part from their sign-in links', async () => {
    for (const name of PEOPLE) await at[name].arrive(await linkFor(name), shelf.programmes[0]!.title, PART);
    await at['Ilse Tarnow'].page.getByText('3 of 12 here').waitFor();
  });

  it('one takes three notes in hand, writes a string on them and lays the slip', async () => {
    const marek = at['Marek Dvorsin'];
    const [first, , third] = notesOf(measure);
    await marek.goTo(measure);
    if (kind === 'tablet') await marek.dragOver(first!, third!);
    else {
      // The first note of the measure is in hand already: touched again it would open the measure.
      await marek.tap('passage');
      await marek.sentence().filter({ hasText: 'Tap its last note' }).waitFor();
      await marek.note(third!).tap();
    }
    expect(await marek.page.locator('main .hits [aria-pressed="true"]').count()).toBe(3);
    await marek.tap('string II');
    await marek.tap('lay the slip');
    await marek.write(/Why, in a sentence/, why, 'lay the slip');
    await marek.sentence().filter({ hasText: 'lay the slip' }).waitFor({ state: 'detached' });
    const laid = () => reader.part(part.id).then(({ state }) => Object.values(state.proposals).filter((slip) => slip.why === why));
    await expect.poll(laid).toMatchObject([{ status: 'open', proposed: { name: 'Marek Dvorsin' } }]);
    expect((await laid())[0]!.marks.map(({ note }) => note)).toEqual(notesOf(measure).slice(0, 3));
  });

  it('another goes to it by its number, is for it and says something', async () => {
    const celia = at['Celia Vantongel'];
    if (kind === 'phone') {
      await celia.goTo('9');
      await celia.markingOff();
      await celia.tap(`Next open measure: ${measure}`);
    } else {
      await celia.goTo(measure);
      await celia.tap('open');
    }
    const slip = celia.slip(why);
    await slip.getByRole('button', { name: 'for', exact: true }).tap();
    await slip.getByRole('img', { name: /^1 for, 0 against/ }).waitFor();
    await slip.getByRole('button', { name: 'say something' }).tap();
    await celia.write(/Say something/, 'It lies well.', 'say it');
    await slip.getByText('It lies well.').waitFor();
  });

  it('the principal inks it in, and the mark stands for everybody', async () => {
    const ilse = at['Ilse Tarnow'];
    await ilse.goTo(measure);
    await ilse.tap('open');
    const slip = ilse.slip(why);
    await slip.getByText('It lies well.').waitFor();
    await slip.getByRole('button', { name: 'ink in' }).tap();
    const [first] = notesOf(measure);
    for (const name of PEOPLE) await at[name].page.locator(`main .system [data-on="${first}"][data-mark="string:2"][data-state="adopted"]`).waitFor();
  });

  it('a finger that goes up the page moves it, and takes nothing in hand', async () => {
    const celia = at['Celia Vantongel'];
    const pages = celia.page.locator('main');
    const before = await pages.evaluate((main) => ({ top: main.scrollTop, room: main.scrollHeight - main.clientHeight - main.scrollTop }));
    const inHand = await celia.page.locator('main .hits [aria-pressed="true"]').first().getAttribute('data-note');
    const down = before.room < 200;
    await celia.swipe(celia.page.locator('main .system').first(), 0, down ? 180 : -180);
    await expect.poll(() => pages.evaluate((main) => main.scrollTop)).not.toBe(before.top);
    expect(await celia.page.locator('main .hits [aria-pressed="true"]').first().getAttribute('data-note')).toBe(inHand);
  });

  it('no page met a fault', () => {
    expect(faults).toEqual([]);
  });
});

describe('slips on a phone', PATIENT, () => {
  it('are gone through by swiping sideways, and after the last comes the next open measure', async () => {
    const context = await browser.newContext({ viewport: { width: 390, height: 844 }, hasTouch: true, isMobile: true });
    const page = await context.newPage();
    page.setDefaultTimeout(60_000);
    const finger = new Finger(page);
    await finger.arrive(await linkFor('Hester Quill'), shelf.programmes[0]!.title, PART);
    await finger.goTo('23');
    await finger.tap('open');
    const inFocus = page.locator('article[aria-current="true"] h3 em');
    await inFocus.filter({ hasText: '23a' }).waitFor();
    const open = page.locator('.slip-row.chosen .slip');
    await finger.swipe(open, -160, 0);
    for (const name of ['46a', '46b', '46c']) {
      await inFocus.filter({ hasText: name }).waitFor();
      if (name !== '46c') await finger.swipe(open, -160, 0);
    }
    await finger.swipe(open, 160, 0);
    await inFocus.filter({ hasText: '46b' }).waitFor();
    await context.close();
  });
});
