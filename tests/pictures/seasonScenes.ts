import type { Page } from 'playwright-core';
import { sendTorn } from '../e2e/season.ts';
import { showPrinted } from './printed.ts';
import type { Places, Scene } from './scenes.ts';

async function folder(page: Page, { origin, season }: Places): Promise<void> {
  await page.goto(`${origin}/folder/${season.programme}`);
  await page.locator('.since-changes li').first().waitFor();
}

/** Brings a part of the page to its top. */
const toTop = (page: Page, of: string): Promise<void> => page.locator(of).first().evaluate((one) => one.scrollIntoView({ block: 'start' }));

const unfold = (page: Page, fold: string): Promise<void> => page.locator(`[data-fold="${fold}"] .fold-word`).click();

const inFolder = (show: (page: Page) => Promise<void>): Scene['reach'] => async ({ page }, places) => {
  await folder(page, places);
  await show(page);
};

/** What a librarian and a principal see in the course of a season. */
export const SEASON_SCENES: readonly Scene[] = [
  { name: 'late', says: 'A programme in its folder: its days, what is late, and who is waited for', role: 'librarian', size: 'laptop', reach: inFolder(async () => {}) },
  { name: 'late-phone', says: 'The same on a phone', role: 'librarian', size: 'phone', reach: inFolder(async () => {}) },
  {
    name: 'days', says: 'A programme’s rehearsals and concerts, and the deadlines counted back from them', role: 'librarian', size: 'laptop',
    reach: inFolder(async (page) => {
      await unfold(page, 'programme');
      await toTop(page, '[data-fold="programme"]');
    }),
  },
  {
    name: 'seating', says: 'Who sits where in one programme: a deputy, who is away, desks that move back', role: 'librarian', size: 'laptop',
    reach: inFolder(async (page) => {
      await page.locator('.seatings .fold-word').first().click();
      await toTop(page, '.seatings');
    }),
  },
  {
    name: 'season', says: 'From season to season: bowings offered again, and the wrong notes of the edition', role: 'librarian', size: 'laptop',
    reach: inFolder(async (page) => {
      await unfold(page, 'misprints');
      await page.locator('.misprints li').first().waitFor();
      await toTop(page, '.since');
    }),
  },
  { name: 'copies', says: 'Copies for the desks, on the paper the orchestra uses', role: 'librarian', size: 'laptop', reach: inFolder((page) => toTop(page, '.hand-out')) },
  {
    name: 'desk-part', says: 'The part as it is printed for the first desk', role: 'librarian', size: 'paper',
    async reach({ page }, { origin, part }) {
      const answer = await page.request.get(`${origin}/api/parts/${part}/print?for=1&form=pdf&paper=a4`);
      await showPrinted(page, await answer.body());
    },
  },
  {
    name: 'change-slips', says: 'A change after the parts went out, as a slip for each desk it is for', role: 'librarian', size: 'slip',
    async reach({ page }, places) {
      await page.addInitScript(() => (window.print = () => document.body.setAttribute('data-printed', 'yes')));
      await folder(page, places);
      await page.getByRole('button', { name: 'print a slip for each desk' }).click();
      await page.locator('body[data-printed]').waitFor();
      await page.emulateMedia({ media: 'print' });
    },
  },
  {
    name: 'changed', says: 'What a corrected edition changed: old and new beside each other, and the marks that did not go along', role: 'principal', size: 'laptop',
    async reach({ page }, { origin, season }) {
      await page.goto(`${origin}/changed/${season.part}`);
      await page.locator('.edition svg.music:not(.empty)').first().waitFor();
      await page.waitForFunction(() => document.querySelectorAll('.edition svg.empty').length === 0);
    },
  },
  {
    name: 'revisions', says: 'Two states of a part, before and after', role: 'principal', size: 'laptop',
    async reach({ page }, { origin, part }) {
      await page.goto(`${origin}/revisions/${part}`);
      await page.locator('[data-pair]').first().waitFor();
    },
  },
  {
    name: 'archive', says: 'The archive: marks put by, season after season', role: 'librarian', size: 'laptop',
    async reach({ page }, { origin }) {
      await page.goto(`${origin}/archive`);
      await page.locator('.sets li').first().waitFor();
    },
  },
  {
    name: 'not-taken', says: 'Three files sent as one work, one torn and one without a string part: none is kept, and each says why', role: 'librarian', size: 'laptop',
    async reach({ page }, places) {
      await sendTorn(places.origin, page.context(), places.season.programme);
      await folder(page, places);
      await page.locator('.imports li li').first().waitFor();
    },
  },
];
