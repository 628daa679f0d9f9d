import { mkdtempSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import type { Browser, Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import type { CarriedView } from '../../core/agreement/wire/http.ts';
import { startBrowser } from '../support/browser.ts';
import { seriousViolations } from './axe.ts';
import { correctedScore } from './correctedScore.ts';
import { openHouse, type House } from './house.ts';
import { Reader, signIn } from './reader.ts';

const PICTURES = process.env.BOWLINE_PICTURES ?? mkdtempSync(join(tmpdir(), 'bowline-pictures-'));
const PATIENT = { timeout: 240_000 };
const SIZES = { laptop: { width: 1440, height: 900 }, tablet: { width: 1024, height: 1366 }, phone: { width: 390, height: 844 } };

let house: House, browser: Browser, reader: Reader, part: string, programme: string;
let before: Awaited<ReturnType<Reader['part']>>;
let corrected: ReturnType<typeof correctedScore>;
const pages = {} as Record<'principal' | 'librarian', Page>;
const faults: string[] = [];

beforeAll(async () => {
  [house, browser] = await Promise.all([openHouse(true), startBrowser()]);
  for (const role of ['principal', 'librarian'] as const) {
    const context = await browser.newContext({ viewport: SIZES.laptop });
    const page = (pages[role] = await context.newPage());
    page.setDefaultTimeout(60_000);
    page.on('pageerror', (fault) => faults.push(`${role}: ${fault.message}`));
    await signIn(page, house.links.get(role)!);
    if (role === 'principal') reader = new Reader(context, house.origin);
  }
  const work = await reader.work('Low Water');
  programme = (await reader.shelf()).programmes.find(({ works }) => works.some(({ id }) => id === work.id))!.id;
  part = work.parts[0]!.id;
  before = await reader.part(part);
  corrected = correctedScore(await reader.text(`/parts/${part}/source`), before);
}, 240_000);

afterAll(async () => {
  await browser?.close();
  await house?.stop();
});

const carried = async () => JSON.parse(await reader.text(`/parts/${part}/carried`)) as CarriedView;
const ledge = (page: Page) => page.locator('.where span').first();
const drawn = async (page: Page) => {
  await page.locator('.edition svg.music:not(.empty)').first().waitFor();
  await page.waitForFunction(() => document.querySelectorAll('.edition svg.empty').length === 0);
};

describe('a corrected score laid over one with marks', PATIENT, () => {
  it('is laid by the librarian in the folder, who is led to what changed', async () => {
    const page = pages.librarian;
    await page.goto(`${house.origin}/folder/${programme}`);
    await page.getByLabel('lay a corrected score', { exact: true }).setInputFiles({ name: 'corrected.musicxml', mimeType: 'application/xml', buffer: Buffer.from(corrected.text) });
    await page.getByText(/^Corrected: /).waitFor();
    await page.getByRole('button', { name: 'what changed' }).click();
    await page.waitForURL(`${house.origin}/changed/${part}`);
    await drawn(page);
    expect(await ledge(page).textContent()).toMatch(/did not go along/);
    await page.screenshot({ path: join(PICTURES, 'changed-librarian.png') });
  });

  it('keeps every mark whose music is unchanged, along with its measure, and lists the rest', async () => {
    const now = await reader.part(part);
    const { places } = await carried();
    const lost = places.flatMap(({ marks }) => marks);
    const there = new Set(now.part.measures.flatMap(({ notes }) => notes.map(({ id }) => id)));
    const standing = (view: typeof now) => view.state.ink.filter(({ superseded }) => !superseded);
    expect(lost.some(({ mark, why }) => mark.note === corrected.changedNote && why === 'changed')).toBe(true);
    const open = Object.values(now.state.proposals).filter(({ status }) => status === 'open').flatMap(({ marks }) => marks);
    const gone = [...standing(now).map(({ mark }) => mark), ...open].filter(({ note }) => !there.has(note));
    expect(lost.filter(({ why }) => why !== 'slur')).toHaveLength(gone.length);
    const [late] = standing(before).filter(({ measure }) => measure > corrected.putInAfter + 1).slice(-1);
    const moved = now.part.measures.find(({ notes }) => notes.some(({ id }) => id === late!.mark.note))!;
    expect(moved.ordinal).toBeGreaterThan(late!.measure);
    expect(standing(now).find(({ mark }) => mark.note === late!.mark.note)!.measure).toBe(moved.ordinal);
  });

  it('shows both editions beside each other in every size, and can be read by everyone', async () => {
    const page = pages.principal;
    await page.goto(`${house.origin}/changed/${part}`);
    for (const [name, size] of Object.entries(SIZES)) {
      await page.setViewportSize(size);
      await drawn(page);
      await page.waitForTimeout(500);
      await page.screenshot({ path: join(PICTURES, `changed-${name}.png`) });
      expect(await page.evaluate(() => document.documentElement.scrollWidth <= innerWidth)).toBe(true);
      expect(await seriousViolations(page)).toEqual([]);
    }
    await page.setViewportSize(SIZES.laptop);
    await drawn(page);
  });

  it('lets the principal put a mark on a note of the new edition from the keyboard, inked in as it was', async () => {
    const page = pages.principal;
    const { places } = await carried();
    const mark = places.flatMap(({ marks }) => marks)[0]!;
    expect(mark.isInk).toBe(true);
    const inked = (await reader.part(part)).state.ink.length;
    await page.keyboard.press('ArrowRight');
    await page.keyboard.press('ArrowLeft');
    await page.keyboard.press('Enter');
    await page.getByText('It stands there now.').waitFor();
    const { state } = await reader.part(part);
    expect(state.ink).toHaveLength(inked + 1);
    expect(state.ink.at(-1)).toMatchObject({ mark: { note: mark.maybe!.note, value: mark.mark.value }, seats: mark.seats, superseded: null });
    expect((await carried()).settled[mark.key]).toMatchObject({ how: 'put' });
    await page.screenshot({ path: join(PICTURES, 'changed-put.png') });
  });

  it('lets a mark be left out, and looked at again', async () => {
    const page = pages.principal;
    const next = (await carried()).places.flatMap(({ marks }) => marks)[1];
    if (next) {
      await page.keyboard.press('Backspace');
      await page.getByText('Left out.').waitFor();
      expect((await carried()).settled[next.key]).toMatchObject({ how: 'leftOut' });
    }
    await page.getByRole('button', { name: 'look at it again' }).first().click();
    await page.getByText('It is open again.').waitFor();
    expect(Object.keys((await carried()).settled)).toHaveLength(next ? 1 : 0);
  });

  it('lets all marks that stood beside a change be put on the same notes at once', async () => {
    const page = pages.principal;
    const before = await carried();
    const place = before.places.find(({ marks }) => marks.filter(({ why }) => why === 'beside').length > 1)!;
    await page.getByRole('button', { name: /^put all/ }).first().click();
    await page.getByText('put on the same notes.').waitFor();
    const { settled } = await carried();
    expect(place.marks.filter(({ why }) => why === 'beside').every(({ key }) => settled[key]?.how === 'put')).toBe(true);
    const { state } = await reader.part(part);
    for (const { mark, maybe } of place.marks) expect(state.ink.some((one) => !one.superseded && one.mark.note === maybe!.note && JSON.stringify(one.mark.value) === JSON.stringify(mark.value))).toBe(true);
    await page.evaluate(() => (document.documentElement.dataset.light = 'stand'));
    await page.screenshot({ path: join(PICTURES, 'changed-dark.png') });
  });

  it('throws nothing in any browser', () => expect(faults).toEqual([]));
});
