import type { Browser } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { startBrowser } from '../support/browser.ts';
import { seriousViolations } from './axe.ts';
import { openHouse, type House } from './house.ts';
import { Player } from './player.ts';
import { Reader, signIn } from './reader.ts';

describe('how the part lies on the stand', { timeout: 240_000 }, () => {
  let house: House, browser: Browser, player: Player;
  const systems = () => player.page.locator('main [data-system]').count();
  let last = '';
  /** A long part stands first with its beginning alone: whole is what has its last note, every line drawn. */
  const whole = () => player.page.waitForFunction((id) => document.querySelector(`main .hits [data-note="${id}"]`) !== null && document.querySelectorAll('main [data-system]').length === document.querySelectorAll('main svg.system').length, last, { timeout: 120_000 });

  beforeAll(async () => {
    house = await openHouse(true);
    browser = await startBrowser();
    const context = await browser.newContext({ viewport: { width: 1440, height: 900 } });
    const page = await context.newPage();
    page.setDefaultTimeout(60_000);
    await signIn(page, house.links.get('principal')!);
    player = new Player(page, house.origin);
    const reader = new Reader(context, house.origin);
    const { programmes } = await reader.shelf();
    const { id } = programmes[0]!.works[0]!.parts.find(({ section }) => section)!;
    last = (await reader.part(id)).part.measures.flatMap(({ notes }) => notes).filter(({ rest }) => !rest).at(-1)!.id;
    await player.stand(id);
    await whole();
  }, 240_000);

  afterAll(async () => {
    await browser?.close();
    await house?.stop();
  });

  it('larger puts fewer measures on a line, and is so again after a reload', async () => {
    const before = await systems();
    await player.press('>', '>');
    await player.sentence().filter({ hasText: '145 percent' }).waitFor();
    // Until the new lines come the old ones stand, whole.
    await expect.poll(systems, { timeout: 120_000 }).not.toBe(before);
    await whole();
    const larger = await systems();
    expect(larger).toBeGreaterThan(before);
    await player.page.reload();
    await player.page.locator('main [data-note]').first().waitFor();
    await whole();
    expect(await systems()).toBe(larger);
    await player.press('<', '<');
    await player.sentence().filter({ hasText: '100 percent' }).waitFor();
  });

  it('lies in the lines and pages of the print, and back', async () => {
    await player.press('Shift+V');
    await player.sentence().filter({ hasText: 'as they will be printed' }).waitFor();
    await player.page.locator('main [data-page="page 2"]').waitFor();
    expect(await seriousViolations(player.page)).toEqual([]);
    await player.press('Shift+V');
    await player.page.locator('main [data-page]').first().waitFor({ state: 'detached' });
  });

  it('another part lies under every line with the same measures, until none is wanted', async () => {
    await whole();
    await player.press('Shift+U');
    await player.sentence().filter({ hasText: 'lies under every line' }).waitFor();
    await player.page.waitForFunction(() => document.querySelectorAll('main .other-line svg').length === document.querySelectorAll('main [data-system]').length, undefined, { timeout: 120_000 });
    const measures = await player.page.locator('main [data-system]').evaluateAll((rows) => rows.map((row) => ['svg.system', '.other-line svg'].map((one) => row.querySelectorAll(`${one} .sys .measure`).length)));
    for (const [mine, theirs] of measures) expect(theirs).toBe(mine);
    expect(await seriousViolations(player.page)).toEqual([]);
    for (let i = 0; i < 8 && (await player.page.locator('main .other-line').count()); i += 1) await player.press('Shift+U');
    await player.sentence().filter({ hasText: 'Only your own part' }).waitFor();
  });
});
