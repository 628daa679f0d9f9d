import { mkdtempSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import type { Browser, Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import type { PartView } from '../../core/agreement/wire/http.ts';
import { startBrowser } from '../support/browser.ts';
import { openHouse, type House } from './house.ts';
import { Player } from './player.ts';
import { Reader, signIn } from './reader.ts';

const PICTURES = process.env.BOWLINE_PICTURES ?? mkdtempSync(join(tmpdir(), 'bowline-pictures-'));
const PATIENT = { timeout: 240_000 };

let house: House, browser: Browser, page: Page, principal: Player, part: PartView;

beforeAll(async () => {
  [house, browser] = await Promise.all([openHouse(true), startBrowser()]);
  const context = await browser.newContext({ viewport: { width: 390, height: 844 }, colorScheme: 'dark' });
  // A browser without a window has no printer to ask.
  await context.addInitScript(() => (window.print = () => document.documentElement.setAttribute('data-printed', 'yes')));
  page = await context.newPage();
  page.setDefaultTimeout(60_000);
  await signIn(page, house.links.get('principal')!);
  const reader = new Reader(context, house.origin);
  part = await reader.part((await reader.work('Low Water')).parts[0]!.id);
  principal = new Player(page, house.origin);
}, 240_000);

afterAll(async () => {
  await browser?.close();
  await house?.stop();
});

const sheets = async (format: 'A4' | 'Letter'): Promise<number> => {
  const pdf = await page.pdf({ format, preferCSSPageSize: false });
  writeFileSync(join(PICTURES, `paper-${format}.pdf`), pdf);
  return pdf.toString('latin1').match(/\/Type\s*\/Page\b/g)!.length;
};

describe('who is new', PATIENT, () => {
  const hint = (text: string) => page.getByRole('status').getByText(text);

  it('is told one thing to try at a time, and nothing again that was done once, after a reload neither', async () => {
    await principal.stand(part.id);
    await hint('Tap a note or press an arrow').waitFor({ timeout: 120_000 });
    await principal.press('3', 'z');
    await hint('Enter opens the measure').waitFor();
    await principal.press('Enter', 'Escape');
    await hint('f works out fingerings').waitFor();
    await page.reload();
    await hint('f works out fingerings').waitFor({ timeout: 120_000 });
    expect(await hint('Tap a note or press an arrow').count()).toBe(0);
  });
});

describe('a part on paper', PATIENT, () => {
  it('is laid in lines as wide as paper at the press of Ctrl P, on a telephone too, and then printed', async () => {
    await principal.stand(part.id);
    await expect.poll(() => page.locator('main [data-system]').count(), { timeout: 60_000 }).toBeGreaterThan(20);
    const onScreen = await page.locator('main [data-system]').count();
    await principal.goTo('11');
    await principal.press('3');
    await principal.press('Control+p');
    await page.locator('html[data-printed]').waitFor({ timeout: 120_000 });
    const onPaper = await page.locator('.on-paper > svg.music').count();
    expect(onPaper).toBeGreaterThan(5);
    expect(onPaper).toBeLessThan(onScreen / 2);
  });

  it('shows the print and what stands in ink, in daylight and without the ledge; nothing that is only pencilled', async () => {
    await page.emulateMedia({ media: 'print' });
    expect(await page.locator('.ledge').isVisible()).toBe(false);
    expect(await page.locator('main').isVisible()).toBe(false);
    expect(await page.locator('.on-paper > svg.music').first().isVisible()).toBe(true);
    const states = await page.locator('.on-paper [data-mark]').evaluateAll((all) => [...new Set(all.map((mark) => mark.getAttribute('data-state')))]);
    expect(states).toEqual(['adopted']);
    const { background, ink } = await page.evaluate(() => ({ background: getComputedStyle(document.body).backgroundColor, ink: getComputedStyle(document.querySelector('.on-paper svg.music')!).color }));
    expect([background, ink]).toEqual(['rgb(255, 255, 255)', 'rgb(0, 0, 0)']);
    await page.emulateMedia({ media: null });
  });

  it('fills more than one sheet of either size, and no line is on two', async () => {
    const [a4, letter] = [await sheets('A4'), await sheets('Letter')];
    expect(a4).toBeGreaterThan(1);
    expect(letter).toBeGreaterThanOrEqual(a4);
    expect(letter).toBeLessThan(2 * a4);
  });

  it('is cleared away with the next key', async () => {
    await principal.press('ArrowRight');
    await page.locator('.on-paper').waitFor({ state: 'detached' });
    await principal.mark(part.part.measures.find(({ number }) => number === '11')!.notes[0]!.id, 'finger:3', 'proposed').waitFor();
  });
});
