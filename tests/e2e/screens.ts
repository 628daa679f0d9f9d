import type { Page } from 'playwright-core';
import { demoScore } from '../../server/demo/score/writeScore.ts';
import { Librarian } from './librarian.ts';
import { Player } from './player.ts';

export interface Tour {
  page: Page;
  origin: string;
  /** The part that lies on the stand. */
  part: string;
  programme: string;
  /** A programme without a work in it. */
  bare: string;
}

export interface Screen {
  name: string;
  who: 'librarian' | 'principal' | 'nobody';
  open(tour: Tour): Promise<void>;
}

const screen = (who: Screen['who'], name: string, open: Screen['open']): Screen => ({ who, name, open });

/** The demo's part on the stand, engraved, with a measure in hand. */
async function stand({ page, origin, part }: Tour, measure: string): Promise<Player> {
  const player = new Player(page, origin);
  await player.stand(part);
  await player.goTo(measure);
  await page.waitForFunction(() => document.querySelectorAll('main .sys').length === document.querySelectorAll('[data-system]').length);
  return player;
}

const keys = (name: string, measure: string, pressed: readonly string[], shows: string): Screen =>
  screen('principal', name, async (tour) => {
    const player = await stand(tour, measure);
    await player.press(...pressed);
    await tour.page.locator(shows).first().waitFor();
  });

const offers = async (tour: Tour): Promise<Player> => {
  const player = await stand(tour, '9');
  await player.press('f');
  await tour.page.locator('.offers article').nth(2).waitFor();
  return player;
};

const section = async ({ page, origin, part }: Tour, query = ''): Promise<void> => {
  await page.goto(`${origin}/section/${part}${query}`);
  await page.getByRole('img', { name: /seats at their desks/ }).first().waitFor();
};

/** Every screen there is, and how to come to it. */
export const SCREENS: readonly Screen[] = [
  screen('nobody', 'sign-in', async ({ page, origin }) => {
    await page.goto(`${origin}/sign-in?token=used-up`);
    await page.locator('main').waitFor();
  }),
  screen('librarian', 'shelf', async ({ page, origin }) => {
    await page.goto(`${origin}/shelf`);
    await page.locator('.rows .fold-word').first().click();
    await page.locator('.seating').first().waitFor();
  }),
  screen('librarian', 'folder', async ({ page, origin, programme }) => {
    await page.goto(`${origin}/folder/${programme}`);
    await page.getByRole('table').waitFor();
  }),
  screen('librarian', 'piece', async ({ page, origin, programme }) => {
    await page.goto(`${origin}/folder/${programme}`);
    await page.locator('.whole-piece button').first().click();
    await page.locator('.whole-piece [data-fold]').first().waitFor({ timeout: 120_000 });
    await page.locator('.whole-piece [data-fold]').first().locator('.fold-word').click();
    await page.locator('.whole-piece ol li').first().waitFor();
  }),
  screen('librarian', 'score', async ({ page, origin, programme }) => {
    await page.goto(`${origin}/folder/${programme}`);
    await new Librarian(page, origin).layScore('torn.musicxml', demoScore().replace('</note>', '</nota>'));
    await page.getByRole('status').filter({ hasText: 'was not laid' }).waitFor();
  }),
  screen('librarian', 'stand-empty', async ({ page, origin, bare }) => {
    await page.goto(`${origin}/folder/${bare}`);
    await page.locator('.invitation').waitFor();
  }),
  keys('stand-engraved', '1', [], '.caret'),
  keys('stand-open', '46', ['Enter'], '.slip'),
  screen('principal', 'stand-offers', async (tour) => void (await offers(tour))),
  screen('principal', 'stand-hearing', async (tour) => {
    await offers(tour);
    await tour.page.locator('.hearing').first().waitFor();
    await tour.page.locator('.hearing').first().scrollIntoViewIfNeeded();
  }),
  screen('principal', 'stand-compare', async (tour) => {
    await (await offers(tour)).press('ArrowDown', 'b');
    await tour.page.locator('.compare').waitFor();
  }),
  keys('stand-hair', '9', ['e'], 'svg.hair'),
  keys('stand-beside', '9', ['y'], '.beside-mine'),
  keys('stand-past', '46', ['q'], '.past-view'),
  keys('stand-line', '46', ['Enter', 's'], 'form.line'),
  keys('stand-keys', '9', ['?'], '.keys-list'),
  screen('principal', 'section', (tour) => section(tour)),
  screen('principal', 'settled', async (tour) => {
    await section(tour);
    await tour.page.locator('.settled .fold-word').click();
    await tour.page.locator('.settled input').first().waitFor();
  }),
  screen('principal', 'plan', async (tour) => {
    const player = await stand(tour, '47');
    await player.press('v');
    await tour.page.getByText(/changes of bow among twelve players/).waitFor({ timeout: 120_000 });
  }),
  screen('principal', 'rules', async ({ page, origin }) => {
    await page.goto(`${origin}/rules`);
    await page.locator('main.rules li a').first().waitFor();
  }),
  screen('principal', 'one-rule', async ({ page, origin }) => {
    await page.goto(`${origin}/rules/fingering/zero-is-open`);
    await page.locator('article[data-rule]').waitFor();
  }),
];
