import type { Browser, BrowserContext, Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import type { LogView, PartView } from '../../core/agreement/wire/http.ts';
import { startBrowser } from '../support/browser.ts';
import { openHouse, type House } from './house.ts';
import { Player } from './player.ts';
import { Reader, signIn } from './reader.ts';

const PATIENT = { timeout: 240_000 };
const SIZES = { principal: { width: 1440, height: 900 }, player: { width: 1024, height: 1366 } };

let house: House, browser: Browser, reader: Reader, part: PartView;
const contexts = {} as Record<keyof typeof SIZES, BrowserContext>;
const pages = {} as Record<keyof typeof SIZES, Page>;
let principal: Player, player: Player;
const faults: string[] = [];

/** Note of a measure as printed, from 1, as the library numbers it. */
const note = (measure: string, nth: number): string => part.part.measures.find(({ number }) => number === measure)!.notes.find(({ index }) => index === nth - 1)!.id;
const log = async () => (JSON.parse(await reader.text(`/parts/${part.id}/log?after=0`)) as LogView).entries;
const ordinal = (measure: string): number => part.part.measures.find(({ number }) => number === measure)!.ordinal;
/** Reasons of the slips that were laid here, in the order of the log. */
const reasons = async () => (await log()).flatMap(({ name, input }) => (name === 'propose' ? [(input as { why: string }).why] : [])).filter((why) => why.startsWith('Away: '));
const proposals = async () => Object.values((await reader.part(part.id)).state.proposals);

async function cut(): Promise<void> {
  await contexts.principal.setOffline(true);
  await house.close();
}

async function join(): Promise<void> {
  await house.reopen();
  await contexts.principal.setOffline(false);
}

/** Writes a finger on the first note of a measure and lays it with a reason. */
async function layFinger(who: Player, measure: string, finger: string, why: string): Promise<void> {
  await who.goTo(measure);
  await who.press(finger);
  await who.lay(why);
}

beforeAll(async () => {
  [house, browser] = await Promise.all([openHouse(true), startBrowser()]);
  for (const role of ['principal', 'player'] as const) {
    contexts[role] = await browser.newContext({ viewport: SIZES[role] });
    const page = (pages[role] = await contexts[role].newPage());
    page.setDefaultTimeout(60_000);
    page.on('pageerror', (fault) => faults.push(`${role}: ${fault.message}`));
    await signIn(page, house.links.get(role)!);
  }
  reader = new Reader(contexts.player, house.origin);
  part = await reader.part((await reader.work('Low Water')).parts[0]!.id);
  principal = new Player(pages.principal, house.origin);
  player = new Player(pages.player, house.origin);
}, 240_000);

afterAll(async () => {
  await browser?.close();
  await house?.stop();
});

describe('a page that is kept', PATIENT, () => {
  it('can be put on the desk: it names itself, its pictures are there and its keeper is asked for anew each time', async () => {
    const ask = (path: string) => contexts.player.request.get(`${house.origin}${path}`);
    const manifest = (await (await ask('/bowline.webmanifest')).json()) as { start_url: string; display: string; icons: { src: string; sizes: string }[] };
    expect(manifest).toMatchObject({ start_url: '/last', display: 'standalone' });
    for (const { src } of manifest.icons) expect((await ask(src)).headers()['content-type']).toMatch(/^image\/(png|svg\+xml)/);
    expect((await ask('/sw.js')).headers()).toMatchObject({ 'cache-control': 'no-cache', 'content-type': expect.stringMatching(/javascript/) as string });
    for (const page of Object.values(pages)) await page.waitForFunction(() => navigator.serviceWorker.controller !== null, undefined, { timeout: 120_000 });
  });

  it('is in the browser whole, its engraver and faces too, and no faces of scripts it does not show', async () => {
    const kept = await pages.player.evaluate(async () => {
      const names = (await caches.keys()).filter((name) => name.startsWith('bowline/page/'));
      return (await (await caches.open(names[0]!)).keys()).map(({ url }) => new URL(url).pathname);
    });
    for (const wanted of [/^\/index\.html$/, /engrave\.worker-.*\.js$/, /check\.worker-.*\.js$/, /\/de-.*\.js$/, /besley-latin-ext-.*\.woff2$/, /alegreya-sans-latin-500-.*\.woff2$/]) expect(kept.filter((path) => wanted.test(path))).not.toEqual([]);
    expect(kept.filter((path) => /cyrillic|greek|vietnamese/.test(path))).toEqual([]);
  });
});

describe('the line is cut in the middle of marking', PATIENT, () => {
  it('after a reload the same note is in hand, the measure open, the pencil as it was, and what was laid before and since is there', async () => {
    await principal.stand(part.id);
    await player.stand(part.id);
    await layFinger(principal, '10', '1', 'Away: laid with a line');
    await expect.poll(reasons, { timeout: 30_000 }).toContain('Away: laid with a line');
    await layFinger(principal, '11', '2', 'Away: as the line is cut');
    await cut();
    await layFinger(principal, '12', '3', 'Away: the second without');
    await principal.sentence().filter({ hasText: /in your pencil/ }).waitFor();
    await principal.goTo('14');
    await principal.press('ArrowRight', '4');
    await principal.mark(note('14', 2), 'finger:4', 'proposed').waitFor();
    const address = pages.principal.url();

    await pages.principal.reload();
    await principal.mark(note('14', 2), 'finger:4', 'proposed').waitFor({ timeout: 120_000 });
    expect(pages.principal.url()).toBe(address);
    await principal.sentence().filter({ hasText: /in your pencil/ }).waitFor();
    for (const measure of ['10', '11', '12']) await pages.principal.locator(`main [data-open="${ordinal(measure)}"]`).waitFor({ state: 'attached' });
    await principal.lay('Away: the third without, after a reload');
    await principal.goTo('10');
    await principal.press('Enter');
    await principal.slip('Away: laid with a line').waitFor();
    // As an installed page begins.
    await pages.principal.goto(`${house.origin}/last`);
    await principal.slip('Away: laid with a line').waitFor({ timeout: 120_000 });
  });

  it('another marks the same measure without a line, after a reload of their own', async () => {
    await pages.player.reload();
    await pages.player.locator('[data-note]').first().waitFor({ timeout: 120_000 });
    await layFinger(player, '12', '2', 'Away: another hand in the same measure');
    await pages.player.reload();
    await pages.player.locator(`main [data-open="${ordinal('12')}"]`).waitFor({ state: 'attached', timeout: 120_000 });
  });

  it('the folder and the shelf are as they lay here last, and say so', async () => {
    await pages.player.goto(`${house.origin}/shelf`);
    await pages.player.getByText('This is how it lay here last.').waitFor();
    await pages.player.getByRole('link', { name: 'Tide Tables' }).click();
    await pages.player.getByRole('table').waitFor();
  });

  it('when the line is back everything goes round in the order it was written, and both proposals stand', async () => {
    await join();
    await player.stand(part.id);
    await expect.poll(async () => (await reasons()).length, { timeout: 60_000 }).toBe(5);
    expect((await reasons()).filter((why) => !why.includes('another hand'))).toEqual(['Away: laid with a line', 'Away: as the line is cut', 'Away: the second without', 'Away: the third without, after a reload']);
    const standing = (await proposals()).filter(({ from, status }) => from === ordinal('12') && status === 'open');
    expect(standing.map(({ why }) => why).sort()).toEqual(expect.arrayContaining(['Away: another hand in the same measure', 'Away: the second without']));
    for (const page of Object.values(pages)) await page.waitForFunction(() => !/in your pencil/.test(document.querySelector('[role=status]')?.textContent ?? ''));
    expect(faults).toEqual([]);
  });
});

describe('who leaves takes everything along', PATIENT, () => {
  it('signed out without a line, nothing of the part is left in the browser, and the library hears of it later', async () => {
    const page = pages.principal;
    await page.goto(`${house.origin}/shelf`);
    await page.getByRole('button', { name: 'leave', exact: true }).waitFor();
    await cut();
    await page.getByRole('button', { name: 'leave', exact: true }).click();
    await page.waitForURL((url) => url.pathname === '/sign-in');
    await page.goto(`${house.origin}/stand/${part.id}`);
    await page.getByText('this has not lain here lately').waitFor();
    await join();
    await page.goto(`${house.origin}/shelf`);
    await page.getByText(/not signed in/i).waitFor();
    expect((await contexts.principal.request.get(`${house.origin}/api/me`)).status()).toBe(401);
  });
});
