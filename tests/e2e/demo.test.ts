import { mkdtempSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import type { Browser, BrowserContext, Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import type { PartView } from '../../core/agreement/wire/http.ts';
import { startBrowser } from '../support/browser.ts';
import { seriousViolations } from './axe.ts';
import { openHouse, type House } from './house.ts';
import { Player } from './player.ts';
import { Reader, signIn } from './reader.ts';

const SIZES = { principal: { width: 1440, height: 900 }, player: { width: 1024, height: 1366 }, librarian: { width: 1440, height: 900 } };
const PICTURES = mkdtempSync(join(tmpdir(), 'bowline-pictures-'));
const WHY = 'Third finger on the G, the run stays under the hand.';

let house: House, browser: Browser;
const contexts = {} as Record<keyof typeof SIZES, BrowserContext>;
const pages = {} as Record<keyof typeof SIZES, Page>;
const faults: string[] = [];
let principal: Player, player: Player, reader: Reader, part: PartView;

/** Note of a measure as printed, from 1, as the library numbers it. */
const note = (measure: string, nth: number): string => part.part.measures.find(({ number }) => number === measure)!.notes.find(({ index }) => index === nth - 1)!.id;

beforeAll(async () => {
  house = await openHouse(true);
  browser = await startBrowser();
  for (const role of ['principal', 'player', 'librarian'] as const) {
    contexts[role] = await browser.newContext({ viewport: SIZES[role], acceptDownloads: true, hasTouch: role === 'player' });
    const page = (pages[role] = await contexts[role].newPage());
    page.setDefaultTimeout(30_000);
    page.on('pageerror', (fault) => faults.push(`${role}: ${fault.message}`));
    await signIn(page, house.links.get(role)!);
  }
  reader = new Reader(contexts.librarian, house.origin);
  part = await reader.part((await reader.work('Low Water')).parts[0]!.id);
  principal = new Player(pages.principal, house.origin);
  player = new Player(pages.player, house.origin);
});

afterAll(async () => {
  await browser?.close();
  await house?.stop();
});

describe('three people on one part', () => {
  it('the principal and a player open the same part, and each sees the other there', async () => {
    await Promise.all([principal.stand(part.id), player.stand(part.id)]);
    await pages.principal.getByText('2 of 12 here').waitFor();
    await player.goTo('20');
    await principal.goTo('19');
    await pages.principal.locator('main .present', { hasText: 'Marek Dvorsin' }).waitFor();
  });

  it('a finding appears while typing, before anything is laid, and goes when the mark is taken back', async () => {
    await principal.goTo('18');
    await principal.press('0');
    await principal.finding('fingering/zero-is-open', note('18', 1)).waitFor();
    await principal.press('z');
    await principal.finding('fingering/zero-is-open', note('18', 1)).waitFor({ state: 'detached' });
  });

  it('what the principal proposes by keyboard the player sees without loading the page again', async () => {
    await player.goTo('18');
    await principal.press('3', 'u', 'ArrowRight', '2', 'ArrowRight', '1', 'c');
    await principal.mark(note('18', 1), 'finger:3', 'proposed').waitFor();
    await principal.lay(WHY);
    await player.press('Enter');
    await player.slip(WHY).waitFor();
  });

  it('the player votes and says something, and the principal sees both', async () => {
    await player.press('+', 's');
    await player.write(/Say something/, 'It lies well at the tempo.');
    await principal.press('Enter');
    await principal.slip(WHY).getByText('It lies well at the tempo.').waitFor();
    await principal.slip(WHY).getByRole('img', { name: /^1 for, 0 against/ }).waitFor();
  });

  it('the principal inks the slip in, and for the player pencil turns to ink', async () => {
    await principal.press('Enter');
    await player.mark(note('18', 1), 'finger:3', 'adopted').waitFor();
    const { state } = await reader.part(part.id);
    expect(Object.values(state.proposals).find(({ why }) => why === WHY)).toMatchObject({ status: 'adopted', decided: { name: 'Ilse Tarnow' } });
  });
});

describe('every screen', () => {
  it('has no serious fault that axe knows of, at the size of a laptop and of a tablet', async () => {
    const found: string[] = [];
    for (const page of [pages.principal, pages.player]) {
      const stand = new URL(page.url());
      for (const path of [stand.pathname, '/shelf', `/section/${part.id}`]) {
        await page.goto(house.origin + path);
        await page.getByRole('navigation').waitFor();
        await page.locator(path.startsWith('/stand') ? '[data-note]' : 'main').first().waitFor();
        found.push(...(await seriousViolations(page)).map((line) => `${path} ${line}`));
        await page.screenshot({ path: join(PICTURES, `${path.split('/')[1]}-${page.viewportSize()!.width}.png`) });
      }
    }
    expect(found).toEqual([]);
  });

  it('threw nothing all the while', () => {
    expect(faults).toEqual([]);
  });
});
