import { mkdtempSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import type { Browser, Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { rulePages } from '../../core/check/rulePages.ts';
import { startBrowser } from '../support/browser.ts';
import { seriousViolations } from './axe.ts';
import { openHouse, type House } from './house.ts';
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
    await page.locator('.settled summary').focus();
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
    expect(await player.getByLabel('avoided on longer notes').isDisabled()).toBe(true);
    expect(await player.getByRole('button', { name: 'keep these' }).count()).toBe(0);
  });

  it('is changed by the principal from the keyboard and reaches a player’s open page', async () => {
    const { principal, player } = pages;
    await principal.getByLabel('as each player likes').focus();
    await principal.keyboard.press('ArrowDown');
    await principal.getByLabel('seconds a bow lasts at ff').focus();
    await principal.keyboard.press('Control+A');
    await principal.keyboard.type('3.2');
    await principal.getByLabel('one player in four at most').check();
    await principal.getByRole('button', { name: 'keep these' }).focus();
    await principal.keyboard.press('Enter');
    await principal.getByText('Kept for the whole section.').waitFor();
    expect(await settings()).toMatchObject({ openStrings: 'avoided', togetherShare: 0.25, bowSeconds: { pp: 12, ff: 3.2 } });
    await player.waitForFunction(() => (document.querySelector('.settled input[value="avoided"]') as HTMLInputElement).checked);
    expect(await player.getByLabel('seconds a bow lasts at ff').inputValue()).toBe('3.2');
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
