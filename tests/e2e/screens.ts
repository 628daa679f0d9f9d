import type { Page } from 'playwright-core';
import { demoScore } from '../../server/demo/score/writeScore.ts';
import { Librarian } from './librarian.ts';
import { Player } from './player.ts';
import type { Season } from './season.ts';

export interface Tour {
  page: Page;
  origin: string;
  /** The part that lies on the stand. */
  part: string;
  programme: string;
  /** A programme without a work in it. */
  bare: string;
  season: Season;
}

export interface Screen {
  name: string;
  who: 'librarian' | 'principal' | 'nobody';
  open(tour: Tour): Promise<void>;
}

const screen = (who: Screen['who'], name: string, open: Screen['open']): Screen => ({ who, name, open });

/** To a place anew: by the page's own way where it is open, so that nothing is fetched or engraved twice. */
async function walk({ page, origin }: Tour, address: string): Promise<void> {
  if (!page.url().startsWith(origin)) return void (await page.goto(`${origin}${address}`));
  for (const step of ['/rules', address]) {
    await page.evaluate((to) => {
      history.pushState(null, '', to);
      dispatchEvent(new PopStateEvent('popstate'));
      return new Promise((resolve) => requestAnimationFrame(resolve));
    }, step);
    if (step === '/rules') await page.locator('main.rules').waitFor();
  }
}

/** The demo's part on the stand, engraved, with a measure in hand. */
async function stand(tour: Tour, measure: string): Promise<Player> {
  const { page, origin, part } = tour;
  const player = new Player(page, origin);
  await walk(tour, `/stand/${part}`);
  await page.locator('[data-note]').first().waitFor({ timeout: 120_000 });
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

const section = async (tour: Tour): Promise<void> => {
  await walk(tour, `/section/${tour.part}`);
  await tour.page.getByRole('img', { name: /seats at their desks/ }).first().waitFor();
};

/** The folder after a season, with everything unfolded that is folded in it: days, deadlines, seats, earlier seasons, wrong notes, copies, a score that was not taken. */
export async function seasonFolder(tour: Tour): Promise<void> {
  const { page, season } = tour;
  await walk(tour, `/folder/${season.programme}`);
  await page.locator('.since-changes li').first().waitFor();
  await page.locator('.imports li li').first().waitFor();
  for (const fold of ['programme', 'put-by', 'travel', 'misprints']) await page.locator(`[data-fold="${fold}"] .fold-word`).click();
  await page.locator('.seatings .fold-word').first().click();
  await page.locator('[data-fold="travel"] button:not(.fold-word)').click();
  for (const there of ['.misprints li', '.seating li', '.programme-days li', '[data-fold="travel"] li, [data-fold="travel"] .none']) await page.locator(there).first().waitFor();
}

/** Every screen there is, and how to come to it. */
export const SCREENS: readonly Screen[] = [
  screen('nobody', 'sign-in', async ({ page, origin }) => {
    await page.goto(`${origin}/sign-in?token=used-up`);
    await page.locator('main').waitFor();
  }),
  screen('nobody', 'door', async ({ page, origin }) => {
    await page.goto(`${origin}/sign-in`);
    await page.locator('.at-the-door').waitFor();
  }),
  screen('librarian', 'my-sign-in', async (tour) => {
    const { page } = tour;
    await walk(tour, '/shelf');
    await page.locator('[data-fold="my-sign-in"] .fold-word').click();
    await page.locator('.signed-in-on li').first().waitFor();
    await page.locator('.my-sign-in').scrollIntoViewIfNeeded();
  }),
  screen('librarian', 'shelf', async (tour) => {
    const { page } = tour;
    await walk(tour, '/shelf');
    await page.locator('.rows.sections .fold-word').first().click();
    await page.locator('.seating').first().waitFor();
  }),
  screen('librarian', 'folder', async (tour) => {
    await walk(tour, `/folder/${tour.programme}`);
    await tour.page.getByRole('table').waitFor();
  }),
  screen('librarian', 'piece', async (tour) => {
    const { page } = tour;
    await walk(tour, `/folder/${tour.programme}`);
    await page.locator('.whole-piece button').first().click();
    await page.locator('.whole-piece [data-fold]').first().waitFor({ timeout: 120_000 });
    await page.locator('.whole-piece [data-fold]').first().locator('.fold-word').click();
    await page.locator('.whole-piece ol li').first().waitFor();
  }),
  screen('librarian', 'score', async (tour) => {
    const { page, origin } = tour;
    await walk(tour, `/folder/${tour.programme}`);
    await new Librarian(page, origin).layScore('torn.musicxml', demoScore().replace('</note>', '</nota>'));
    await page.getByRole('status').filter({ hasText: 'was not laid' }).waitFor();
  }),
  screen('librarian', 'stand-empty', async (tour) => {
    await walk(tour, `/folder/${tour.bare}`);
    await tour.page.locator('.invitation').waitFor();
  }),
  screen('librarian', 'archive', async (tour) => {
    await walk(tour, '/archive');
    await tour.page.locator('.sets li').first().waitFor();
  }),
  screen('librarian', 'season', seasonFolder),
  screen('principal', 'changed', async (tour) => {
    await walk(tour, `/changed/${tour.season.part}`);
    await tour.page.locator('.edition svg.music:not(.empty)').first().waitFor();
    await tour.page.waitForFunction(() => document.querySelectorAll('.edition svg.empty').length === 0);
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
  screen('principal', 'stand-misprint', async (tour) => {
    await (await stand(tour, '5')).press('Enter');
    await tour.page.locator('[data-fold="misprint"] .fold-word').click();
    await tour.page.locator('.misprint input').first().waitFor();
  }),
  keys('stand-elsewhere', '5', ['Shift+ArrowRight', 'Shift+ArrowRight', 'Shift+Y'], '.elsewhere li'),
  keys('stand-line', '46', ['Enter', 's'], 'form.line'),
  keys('stand-keys', '9', ['?'], '.keys-list'),
  screen('principal', 'revisions', async (tour) => {
    await walk(tour, `/revisions/${tour.part}`);
    await tour.page.locator('[data-pair]').first().waitFor();
    await tour.page.locator('[data-fold="states"] .fold-word').click();
  }),
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
  screen('principal', 'rules', async (tour) => {
    await walk(tour, '/rules');
    await tour.page.locator('main.rules li a').first().waitFor();
  }),
  screen('principal', 'one-rule', async (tour) => {
    await walk(tour, '/rules/fingering/zero-is-open');
    await tour.page.locator('article[data-rule]').waitFor();
  }),
];
