import type { Browser, Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { startBrowser } from '../support/browser.ts';
import { seriousViolations } from './axe.ts';
import { openHouse, type House } from './house.ts';
import { Player } from './player.ts';
import { Reader, signIn } from './reader.ts';

const PATIENT = { timeout: 240_000 };

let house: House, browser: Browser, page: Page, player: Player, part: string;
const faults: string[] = [];

beforeAll(async () => {
  [house, browser] = await Promise.all([openHouse(true), startBrowser()]);
  const context = await browser.newContext({ viewport: { width: 1440, height: 900 } });
  page = await context.newPage();
  page.setDefaultTimeout(60_000);
  page.on('pageerror', (fault) => faults.push(fault.message));
  await signIn(page, house.links.get('player')!);
  player = new Player(page, house.origin);
  part = (await new Reader(context, house.origin).work('Low Water')).parts[0]!.id;
  await player.stand(part);
}, 240_000);

afterAll(async () => {
  await browser?.close();
  await house?.stop();
});

const row = () => page.getByRole('group', { name: 'Hearing' });
const button = (name: RegExp) => row().getByRole('button', { name });
const sounding = () => page.locator('.system [data-sounding]').first();

describe('hearing a passage at the stand', PATIENT, () => {
  it('begins with Space, shows which note sounds, and stops with Space', async () => {
    await player.goTo('9');
    await player.press('f');
    await page.locator('.offers article').nth(1).waitFor();
    await player.press('Space');
    await sounding().waitFor();
    await button(/^stop/).waitFor();
    await player.press('Space');
    await row().getByRole('button', { name: 'hear', exact: true }).waitFor();
    await page.locator('[data-sounding]').waitFor({ state: 'detached' });
  });

  it('plays the other fingering, which is then in focus, and the one before again', async () => {
    await button(/^hear the other, b/).click();
    await page.locator('[data-offer="b"] article[aria-current="true"]').waitFor();
    await sounding().waitFor();
    await button(/^hear the other, a/).click();
    await page.locator('[data-offer="a"] article[aria-current="true"]').waitFor();
    await sounding().waitFor();
    await button(/^stop/).click();
  });

  it('plays the section again and again at half the tempo until it is stopped, and ends by itself otherwise', async () => {
    await row().getByRole('combobox', { name: 'tempo' }).click();
    await page.getByRole('option', { name: '50' }).click();
    await button(/^again and again/).click();
    await button(/^hear the section/).click();
    const first = await sounding().getAttribute('data-sounding');
    const next = page.locator(`.system [data-sounding]:not([data-sounding="${first}"])`).first();
    await next.waitFor();
    await page.locator(`.system [data-sounding="${first}"]`).first().waitFor();
    expect(await seriousViolations(page)).toEqual([]);
    await button(/^again and again/).click();
    await row().getByRole('button', { name: 'hear', exact: true }).waitFor();
    await page.locator('[data-sounding]').waitFor({ state: 'detached' });
  });

  it('works without fingerings asked for: the passage in hand as it is marked', async () => {
    await player.press('Escape');
    await page.locator('.offers').waitFor({ state: 'detached' });
    await player.press('Shift+Space');
    await sounding().waitFor();
    await player.press('Space');
    await page.locator('[data-sounding]').waitFor({ state: 'detached' });
  });

  it('plays a staggered passage where its desks lie against time', async () => {
    await page.goto(`${house.origin}/section/${part}`);
    await button(/^hear the section/).click();
    await page.locator('.lanes [data-sounding]').first().waitFor();
    await button(/^stop/).click();
    await page.locator('[data-sounding]').waitFor({ state: 'detached' });
    expect(faults).toEqual([]);
  });
});
