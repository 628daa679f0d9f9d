import type { Player } from '../e2e/player.ts';
import type { Season } from '../e2e/season.ts';
import { SEASON_SCENES } from './seasonScenes.ts';

export type Role = 'principal' | 'player' | 'librarian';

export const SIZES = { laptop: { width: 1440, height: 900 }, tablet: { width: 1024, height: 1366 }, phone: { width: 390, height: 844 }, paper: { width: 900, height: 1273 }, slip: { width: 620, height: 460 } };
export type Size = keyof typeof SIZES;

export interface Places {
  origin: string;
  programme: string;
  work: string;
  part: string;
  season: Season;
}

/** One screen as somebody sees it: `reach` brings it there, and waits for what must be on it. */
export interface Scene {
  name: string;
  says: string;
  role: Role;
  size: Size;
  dark?: boolean;
  reach(player: Player, places: Places): Promise<void>;
}

const onStand = (...then: (string | { to: string } | { see: string })[]) => async (player: Player, { part }: Places): Promise<void> => {
  await player.stand(part);
  await player.page.locator('main .sys').first().waitFor();
  for (const step of then) {
    if (typeof step === 'string') await player.press(step);
    else if ('to' in step) await player.goTo(step.to);
    else await player.page.locator(step.see).first().waitFor();
  }
};

const opened = onStand({ to: '46' }, 'Enter', { see: 'main article' });

/** Every screen, in the order somebody meets them. */
export const SCENES: readonly Scene[] = [
  { name: 'stand', says: 'An open measure: its slips, the votes desk by desk, the ledge below', role: 'principal', size: 'laptop', reach: opened },
  { name: 'fingerings', says: 'Fingerings for a passage, with the hand over time', role: 'principal', size: 'laptop', reach: onStand({ to: '9' }, 'f', { see: '.offers article:nth-of-type(1)' }, { see: 'svg.hand' }) },
  { name: 'two-fingerings', says: 'Two fingerings about one staff, and the hand on the fingerboard in millimetres', role: 'principal', size: 'laptop', reach: onStand({ to: '9' }, 'f', { see: 'svg.hand' }, 'ArrowDown', 'b', { see: '.compare [data-on-board]' }) },
  { name: 'plan', says: 'A plan of bow changes over the desks, and how much softer the section becomes', role: 'principal', size: 'laptop', reach: onStand({ to: '47' }, 'v', { see: '.lanes .level .sounds' }) },
  { name: 'hair', says: 'The bow along its hair', role: 'principal', size: 'laptop', reach: onStand({ to: '47' }, 'e', { see: '.along-hair svg' }) },
  { name: 'beside', says: 'How the other sections bow the same measures', role: 'principal', size: 'laptop', reach: onStand({ to: '20' }, 'y', { see: '.beside-mine svg' }) },
  { name: 'history', says: 'The history of a measure', role: 'principal', size: 'laptop', reach: onStand({ to: '46' }, 'q', { see: '.past-view li' }) },
  { name: 'elsewhere', says: 'The same figure elsewhere in the part: the marks are copied to the places that are kept', role: 'principal', size: 'laptop', reach: onStand({ to: '5' }, 'Shift+ArrowRight', 'Shift+ArrowRight', 'Shift+Y', { see: '.elsewhere li' }) },
  { name: 'keys', says: 'Every key on the stand', role: 'player', size: 'laptop', reach: onStand('?', { see: '.keys-list' }) },
  { name: 'stand-dark', says: 'Stand light, for the pit', role: 'player', size: 'laptop', dark: true, reach: opened },
  { name: 'stand-tablet', says: 'The stand on a tablet', role: 'player', size: 'tablet', reach: opened },
  { name: 'stand-phone', says: 'Voting on a phone', role: 'player', size: 'phone', reach: opened },
  {
    name: 'shelf', says: 'The Shelf: programmes, people, one’s own hand', role: 'librarian', size: 'laptop',
    async reach({ page }, { origin }) {
      await page.goto(`${origin}/shelf`);
      await page.getByRole('heading').first().waitFor();
    },
  },
  {
    name: 'folder', says: 'The Folder: how far every section is, and what it waits for', role: 'librarian', size: 'laptop',
    async reach({ page }, { origin }) {
      await page.goto(`${origin}/shelf`);
      await page.getByRole('link', { name: 'Tide Tables' }).click();
      await page.getByRole('table').waitFor();
    },
  },
  {
    name: 'section', says: 'The Section: desks against time, and what the section has settled', role: 'principal', size: 'laptop',
    async reach({ page }, { origin, part }) {
      await page.goto(`${origin}/section/${part}`);
      await page.getByRole('img', { name: /seats at their desks/ }).waitFor();
    },
  },
  {
    name: 'rules', says: 'What the spectacles look for, rule by rule', role: 'player', size: 'laptop',
    async reach({ page }, { origin }) {
      await page.goto(`${origin}/rules`);
      await page.locator('main.rules li a').first().waitFor();
    },
  },
  ...SEASON_SCENES,
];
