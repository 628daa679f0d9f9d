import { randomUUID } from 'node:crypto';
import { mkdtempSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import type { Browser, Page } from 'playwright-core';
import type { WorkView } from '../../core/agreement/wire/http.ts';
import type { PieceCheck } from '../../core/agreement/wire/piece.ts';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { rulePages } from '../../core/check/rulePages.ts';
import { startBrowser } from '../support/browser.ts';
import { seriousViolations } from './axe.ts';
import { openHouse, type House } from './house.ts';
import { Neighbour } from './neighbour.ts';
import { Player } from './player.ts';
import { Reader, signIn } from './reader.ts';

const SIZES = { principal: { width: 1280, height: 800 }, player: { width: 1024, height: 1366 } };
const PICTURES = process.env.BOWLINE_PICTURES ?? mkdtempSync(join(tmpdir(), 'bowline-pictures-'));
const PATIENT = { timeout: 240_000 };

let house: House, browser: Browser, reader: Reader, part: string;
const pages = {} as Record<keyof typeof SIZES, Page>;
const faults: string[] = [];

beforeAll(async () => {
  [house, browser] = await Promise.all([openHouse(true), startBrowser()]);
  for (const role of ['principal', 'player'] as const) {
    const context = await browser.newContext({ viewport: SIZES[role] });
    const page = (pages[role] = await context.newPage());
    page.setDefaultTimeout(60_000);
    page.on('pageerror', (fault) => faults.push(`${role}: ${fault.message}`));
    await signIn(page, house.links.get(role)!);
    if (role === 'principal') reader = new Reader(context, house.origin);
  }
  part = (await reader.work('Low Water')).parts[0]!.id;
  for (const page of Object.values(pages)) {
    await page.goto(`${house.origin}/section/${part}`);
    await page.locator('.settled .fold-word').focus();
    await page.keyboard.press('Enter');
    await page.getByText('Open strings', { exact: true }).waitFor();
  }
}, 240_000);

afterAll(async () => {
  await browser?.close();
  await house?.stop();
});

const settings = async () => (await reader.part(part)).section!.settings;

describe('what a section has settled', PATIENT, () => {
  it('is opened by the keyboard without leaving the page, and read by a player who cannot change it', async () => {
    const { player } = pages;
    expect(new URL(player.url()).pathname).toBe(`/section/${part}`);
    expect(await player.getByRole('radio', { name: 'avoided on longer notes' }).isDisabled()).toBe(true);
    expect(await player.getByRole('button', { name: 'keep these' }).count()).toBe(0);
  });

  it('is changed by the principal from the keyboard and reaches a player’s open page', async () => {
    const { principal, player } = pages;
    await principal.getByRole('radio', { name: 'as each player likes' }).focus();
    await principal.keyboard.press('ArrowDown');
    await principal.getByLabel('seconds a bow lasts at ff').focus();
    await principal.keyboard.press('Control+A');
    await principal.keyboard.type('3.2');
    await principal.getByRole('radio', { name: 'one player in four at most' }).check();
    await principal.getByRole('button', { name: 'keep these' }).focus();
    await principal.keyboard.press('Enter');
    await principal.getByText('Kept for the whole section.').waitFor();
    expect(await settings()).toMatchObject({ openStrings: 'avoided', togetherShare: 0.25, bowSeconds: { pp: 12, ff: 3.2 } });
    await player.waitForFunction(() => (document.querySelector('.settled input[value="avoided"]') as HTMLInputElement).checked);
    expect(await player.getByLabel('seconds a bow lasts at ff').inputValue()).toBe('3.2');
    // The principal's own form is written anew with what was kept.
    await expect.poll(() => principal.getByRole('button', { name: 'back to the usual' }).isEnabled()).toBe(true);
  });

  it('is not sent while a bow lasts no time at all', async () => {
    const { principal } = pages;
    await principal.getByLabel('seconds a bow lasts at pp').fill('0');
    await principal.getByRole('button', { name: 'keep these' }).click();
    expect(await principal.getByLabel('seconds a bow lasts at pp').evaluate((input) => (input as HTMLInputElement).validity.rangeUnderflow)).toBe(true);
    expect(await settings()).toMatchObject({ bowSeconds: { pp: 12 } });
    await principal.getByLabel('seconds a bow lasts at pp').fill('12');
  });

  it('has no serious fault that axe knows of, open, at the size of a laptop and of a tablet', async () => {
    const found: string[] = [];
    for (const [role, page] of Object.entries(pages)) {
      await page.getByRole('img', { name: /seats at their desks/ }).waitFor();
      await page.locator('.settled').scrollIntoViewIfNeeded();
      found.push(...(await seriousViolations(page)).map((line) => `${role} ${line}`));
      await page.screenshot({ path: join(PICTURES, `settled-${page.viewportSize()!.width}.png`) });
    }
    expect(found).toEqual([]);
  });

  it('goes back to the usual', async () => {
    const { principal, player } = pages;
    await principal.getByRole('button', { name: 'back to the usual' }).click();
    await principal.getByText('The usual numbers hold again').waitFor();
    expect(await settings()).not.toHaveProperty('bowSeconds');
    await player.waitForFunction(() => (document.querySelector('.settled input[value="free"]') as HTMLInputElement).checked);
    expect(faults).toEqual([]);
  });

  it('is explained rule by rule, from a finding and from the shelf, by the keyboard alone', async () => {
    const { principal, player } = pages;
    await principal.getByRole('link', { name: 'more of this rule' }).first().focus();
    await principal.keyboard.press('Enter');
    const shown = await principal.locator('article[data-rule]').getAttribute('data-rule');
    expect(new URL(principal.url()).pathname).toBe(`/rules/${shown}`);
    expect(await principal.locator('article[data-rule] h2').innerText()).toBe(rulePages().find(({ id }) => id === shown)!.summary);
    await player.goto(`${house.origin}/shelf`);
    await player.getByRole('link', { name: 'What the spectacles look for' }).focus();
    await player.keyboard.press('Enter');
    await player.getByText('At the desk', { exact: true }).waitFor();
    expect(await player.locator('main.rules li a').count()).toBe(rulePages().length);
    expect([...(await seriousViolations(principal)), ...(await seriousViolations(player))]).toEqual([]);
    for (const page of [principal, player]) await page.screenshot({ path: join(PICTURES, `rules-${page.viewportSize()!.width}.png`) });
    expect(faults).toEqual([]);
  });
});

describe('a plan of the changes of a staggered passage', PATIENT, () => {
  const WHY = 'Nobody runs out, and no desk together.';
  const passage = { from: '47', to: '52' };
  const ofPlan = () => pages.principal.getByRole('region', { name: 'A plan for the changes' });

  it('is asked for on the stand with one key, and stands as a picture of the desks with its level and in words', async () => {
    const { principal } = pages;
    const stand = new Player(principal, house.origin);
    await stand.stand(part);
    await stand.goTo(passage.from);
    await stand.press('v');
    await ofPlan().getByText(/36 changes of bow among twelve players in measures 47 to 52/).waitFor();
    await principal.getByRole('img', { name: /^Twelve seats at their desks over measures 47 to 52\. Nothing to watch\.$/ }).waitFor();
    await principal.locator('.lanes .level .sounds').waitFor();
    await principal.getByText(/expected to sound 0\.\d\d dB softer at the worst moment/).waitFor();
  });

  it('has no serious fault that axe knows of, at the size of a laptop and of a tablet', async () => {
    const { principal, player } = pages;
    await player.goto(principal.url());
    const found: string[] = [];
    for (const [role, page] of Object.entries(pages)) {
      await page.getByText(/36 changes of bow among twelve players/).waitFor();
      await page.locator('.lanes .level').waitFor();
      found.push(...(await seriousViolations(page)).map((line) => `${role} ${line}`));
      await page.screenshot({ path: join(PICTURES, `plan-${page.viewportSize()!.width}.png`) });
    }
    expect(found).toEqual([]);
  });

  it('is worked out anew when somebody is away', async () => {
    const { principal } = pages;
    await principal.locator('.plan-form .fold-word').click();
    await principal.getByRole('checkbox', { name: 'Oren Halvard' }).uncheck();
    await ofPlan().getByText(/among 11 players|among eleven players/).waitFor();
    await principal.getByRole('img', { name: /^Eleven seats/ }).waitFor();
    await principal.getByRole('checkbox', { name: 'Oren Halvard' }).check();
    await ofPlan().getByText(/among twelve players/).waitFor();
  });

  it('says in a sentence why measures with rests are no passage to share out', async () => {
    const { principal } = pages;
    await principal.getByLabel('from measure').fill('28');
    await principal.getByLabel('to measure').fill('33');
    await principal.getByRole('button', { name: 'share them out' }).click();
    await ofPlan().getByText(/Measure 28 is plucked: no bow to share there/).waitFor();
    await principal.goBack();
    await ofPlan().getByText(/among twelve players/).waitFor();
  });

  it('goes into the pencil and is laid as a slip: each change on its own seat’s part', async () => {
    const { principal } = pages;
    await ofPlan().getByRole('button', { name: /take into the pencil/ }).click();
    await principal.getByText(/The plan is in the pencil/).waitFor();
    await new Player(principal, house.origin).lay(WHY);
    await principal.getByText(/laid under the part for the section to see/).waitFor();
    const laid = async () => Object.values((await reader.part(part)).state.proposals).find(({ why }) => why === WHY);
    await expect.poll(laid, { timeout: 20_000 }).toBeDefined();
    const changes = (await laid())!.marks.filter(({ value }) => value.kind === 'change');
    expect(changes.length).toBeGreaterThan(20);
    for (const { seats } of changes) expect(seats).toHaveLength(1);
    expect(faults).toEqual([]);
  });
});

describe('the bow along its hair', PATIENT, () => {
  const picture = () => pages.player.getByRole('img', { name: /^The bow along its hair, measures? / });

  it('lies under the staff of the passage at the press of a key, with its scale, its bows and the same in words', async () => {
    const { player } = pages;
    const stand = new Player(player, house.origin);
    await stand.stand(part);
    await stand.goTo('10');
    await stand.press('e');
    await picture().waitFor();
    const bows = await picture().locator('.drawn').count();
    await player.getByText('Bow by bow').click();
    expect(await player.locator('.along-hair tbody tr').count()).toBe(bows);
    await player.getByText(/the longest, in measure \d+, takes \d+ mm of hair/).waitFor();
  });

  it('follows the hand to the next line, and says of a passage that is shared out that each seat has its own bow', async () => {
    const stand = new Player(pages.player, house.origin);
    await stand.goTo('48');
    await pages.player.getByText(/From measure 47 on each seat changes in its own place/).waitFor();
    await picture().locator('.bow.shared').waitFor();
    await stand.press('ArrowDown');
    await picture().locator('.bow.shared').waitFor({ state: 'detached' });
  });

  it('has no serious fault that axe knows of, and is put away with the same key', async () => {
    expect(await seriousViolations(pages.player)).toEqual([]);
    await pages.player.screenshot({ path: join(PICTURES, 'hair-1024.png') });
    await new Player(pages.player, house.origin).press('e');
    await picture().waitFor({ state: 'detached' });
    expect(faults).toEqual([]);
  });
});

describe('how the other sections bow', PATIENT, () => {
  const beside = () => pages.principal.getByRole('region', { name: /^How the other sections bow/ });
  const sentence = () => pages.principal.getByRole('status');

  it('stands under the line in hand with one key: every other string part over my own notes, and in words', async () => {
    const stand = new Player(pages.principal, house.origin);
    await stand.stand(part);
    await stand.goTo('34');
    await stand.press('y');
    for (const name of ['Violin II', 'Viola', 'Violoncello', 'Double bass']) await beside().getByRole('article', { name, exact: true }).getByRole('img').waitFor();
    await beside().getByRole('article', { name: 'Violin II', exact: true }).getByText(/The same notes as mine in measures 32 to 3\d\./).waitFor();
  });

  it('has no serious fault that axe knows of', async () => {
    expect(await seriousViolations(pages.principal)).toEqual([]);
    await pages.principal.screenshot({ path: join(PICTURES, 'beside-1280.png') });
  });

  it('a bow pencilled against another section in unison is found while typing, and gone when it is taken back', async () => {
    const stand = new Player(pages.principal, house.origin);
    await stand.goTo('33');
    await stand.press('u');
    const finding = pages.principal.locator('main .marks [data-finding="section/unison-bowed-against"]');
    await finding.first().waitFor();
    await stand.press('z');
    await finding.first().waitFor({ state: 'detached' });
  });

  it('the bowing of the same music elsewhere is taken into the pencil with one press, and taken back with another', async () => {
    const stand = new Player(pages.principal, house.origin);
    await stand.goTo('72');
    const again = beside().getByRole('article', { name: 'The same music elsewhere in this part' });
    await again.getByRole('button', { name: 'take this bowing' }).first().click();
    await sentence().getByText(/The bowing of measures 68 to 71 is in the pencil/).waitFor();
    await pages.principal.locator('main [data-state="proposed"]').first().waitFor();
    await stand.press('z', 'y');
    await beside().waitFor({ state: 'detached' });
    expect(faults).toEqual([]);
  });
});

describe('a mark that another section inks in', PATIENT, () => {
  const against = (page: Page) => page.locator('main .marks [data-finding="section/unison-bowed-against"]');

  it('shows beside mine and in what there is to watch, while I do nothing', async () => {
    const { principal } = pages;
    const seconds = (await reader.part((await reader.work('Low Water')).parts[1]!.id)).part.measures.find(({ number }) => number === '33')!;
    const stand = new Player(principal, house.origin);
    await stand.goTo('33');
    await stand.press('y');
    const lane = principal.getByRole('region', { name: /^How the other sections bow/ }).getByRole('article', { name: 'Violin II', exact: true });
    await lane.getByText(/go the same way/).waitFor();
    expect(await against(principal).count()).toBe(0);
    const neighbour = await Neighbour.principalOf('Violin II', house.origin, house.links.get('librarian')!);
    await neighbour.ink((await reader.work('Low Water')).parts[1]!.id, seconds.ordinal, [{ note: seconds.notes.find(({ rest }) => !rest)!.id, value: { kind: 'bow', bow: 'up' } }], 'It leads on.');
    await lane.locator('.against').first().waitFor();
    await against(principal).first().waitFor();
    await stand.press('y');
    expect(faults).toEqual([]);
  });
});

describe('a look through the whole piece', PATIENT, () => {
  const piece = () => pages.principal.getByRole('region', { name: /^The whole piece: Low Water/ });
  const pressed = async (name: string): Promise<void> => {
    await piece().getByRole('button', { name }).focus();
    await pages.principal.keyboard.press('Enter');
  };
  const check = async (): Promise<PieceCheck> => JSON.parse(await reader.text(`/works/${work.id}/check`)) as PieceCheck;
  let work: WorkView;

  it('is asked for in the folder from the keyboard, and stopped before it has come to its end', async () => {
    work = await reader.work('Low Water');
    await pages.principal.goto(`${house.origin}/folder/${(await reader.shelf()).programmes[0]!.id}`);
    await pressed('Look through the whole piece');
    await piece().getByRole('img', { name: /of 5 read/ }).waitFor();
    await pressed('Stop looking');
    await pages.principal.getByRole('status').getByText('You wait for it no more.').waitFor();
    await piece().getByRole('button', { name: 'Look through the whole piece' }).waitFor();
    expect(await check()).toMatchObject({ running: null, found: null });
  });

  it('says how far it has come, and what there is to watch in each part as the library counts it', async () => {
    await pressed('Look through the whole piece');
    // A quick machine may have read all of it before the page asks.
    await piece().getByText(/is being read: part \d of 5\.|places to watch/).waitFor();
    await pages.principal.screenshot({ path: join(PICTURES, 'piece-reading-1280.png') });
    await piece().getByText(/places to watch in five parts\./).waitFor();
    const { found } = await check();
    const rows = await piece().locator('.tally').allInnerTexts();
    expect(rows).toHaveLength(5);
    for (const [i, { name, counts }] of found!.parts.entries()) {
      expect(rows[i]).toContain(name);
      if (counts.collides) expect(rows[i]).toContain(counts.collides === 1 ? '1 collides' : `${counts.collides} collide`);
    }
    expect(found!.parts[0]!.counts.collides).toBeGreaterThan(0);
  });

  it('opens a part’s findings, and has no serious fault that axe knows of, at the size of a laptop and of a tablet', async () => {
    const { principal } = pages;
    await piece().getByRole('button', { name: 'Violin II' }).focus();
    await principal.keyboard.press('Enter');
    await piece().getByRole('list', { name: 'To watch in Violin II' }).getByText(/the bow begins up on .* and down in .*Violin I/).waitFor();
    const found: string[] = [];
    for (const size of [{ width: 820, height: 1180 }, SIZES.principal]) {
      await principal.setViewportSize(size);
      found.push(...(await seriousViolations(principal)).map((line) => `${size.width} ${line}`));
      await principal.screenshot({ path: join(PICTURES, `piece-${size.width}.png`) });
    }
    expect(found).toEqual([]);
  });

  it('says that it is from before when a section inks something in afterwards', async () => {
    const { id, name } = work.parts[0]!;
    const measure = (await reader.part(id)).part.measures.find(({ number }) => number === '20')!;
    const page = pages.principal;
    const ink = async (operation: string, input: object) => {
      const answer = await page.context().request.post(`${house.origin}/api/parts/${id}/operations/${operation}`, { data: { operation: randomUUID(), input } });
      expect(answer.status()).toBe(200);
    };
    const proposal = randomUUID();
    await ink('propose', { id: proposal, from: measure.ordinal, to: measure.ordinal, seats: 'all', why: 'As before.', marks: [{ note: measure.notes.find(({ rest }) => !rest)!.id, value: { kind: 'bow', bow: 'down' } }] });
    await ink('adopt', { proposal, revision: 1, why: '' });
    // As one comes back to the window.
    await page.evaluate(() => dispatchEvent(new Event('focus')));
    await piece().getByText(`This is from before something changed in ${name}.`).waitFor();
    await pressed('Look through it again');
    await piece().getByText('This is from before').waitFor({ state: 'detached' });
  });

  it('leads to the measure on the stand', async () => {
    await piece().getByRole('button', { name: /^Violin I\b(?! I)/ }).first().click();
    await piece().getByRole('link', { name: 'Measure 49, on the stand' }).first().click();
    await pages.principal.getByRole('status').filter({ hasText: 'Measure 49,' }).waitFor();
    expect(faults).toEqual([]);
  });
});

describe('a slip that would bring something to watch', PATIENT, () => {
  it('says what, with the way to the page of the rule', async () => {
    const why = 'It rings.';
    const stand = new Player(pages.principal, house.origin);
    await stand.stand(part);
    await stand.goTo('18');
    await stand.press('0');
    await stand.lay(why);
    await stand.press('Enter');
    await stand.slip(why).locator('[data-finding="fingering/zero-is-open"]').getByRole('link', { name: 'more of this rule' }).click();
    await pages.principal.waitForURL((url) => url.pathname === '/rules/fingering/zero-is-open');
    await pages.principal.getByRole('heading', { level: 1 }).waitFor();
    expect(faults).toEqual([]);
  });
});
