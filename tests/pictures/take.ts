/** Photographs every screen of the demo house into client/pictures/: `npm run pictures [name ...]`. */
import { mkdirSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import type { Browser } from 'playwright-core';
import { openHouse } from '../e2e/house.ts';
import { Player } from '../e2e/player.ts';
import { Reader, signIn } from '../e2e/reader.ts';
import { passSeason } from '../e2e/season.ts';
import { startBrowser } from '../support/browser.ts';
import { SCENES, SIZES, type Places, type Role, type Scene } from './scenes.ts';

const FOLDER = join(import.meta.dirname, '../../client/pictures');

async function signedIn(browser: Browser, link: string): Promise<string> {
  const context = await browser.newContext();
  await signIn(await context.newPage(), link);
  const state = JSON.stringify(await context.storageState());
  await context.close();
  return state;
}

async function take(browser: Browser, scene: Scene, state: string, places: Places): Promise<void> {
  const context = await browser.newContext({ viewport: SIZES[scene.size], hasTouch: scene.size === 'tablet' || scene.size === 'phone', storageState: JSON.parse(state) as never, reducedMotion: 'reduce', locale: 'en-GB', colorScheme: scene.dark ? 'dark' : 'light' });
  const page = await context.newPage();
  page.setDefaultTimeout(60_000);
  const player = new Player(page, places.origin);
  await scene.reach(player, places);
  await page.waitForFunction(() => document.fonts.ready.then(() => true));
  await page.waitForTimeout(1500);
  await page.screenshot({ path: join(FOLDER, `${scene.name}.png`) });
  await context.close();
}

async function main(wanted: readonly string[]): Promise<void> {
  mkdirSync(FOLDER, { recursive: true });
  const [house, browser] = await Promise.all([openHouse(true), startBrowser()]);
  try {
    const states = new Map<Role, string>();
    for (const [role, link] of house.links) states.set(role as Role, await signedIn(browser, link));
    const context = await browser.newContext({ storageState: JSON.parse(states.get('librarian')!) as never });
    const reader = new Reader(context, house.origin);
    const work = await reader.work('Low Water');
    const { programmes } = await reader.shelf();
    const principal = await browser.newContext({ storageState: JSON.parse(states.get('principal')!) as never });
    const season = await passSeason(house.origin, { librarian: context, principal });
    const places: Places = { origin: house.origin, programme: programmes[0]!.id, work: work.id, part: work.parts[0]!.id, season };
    for (const scene of SCENES) {
      if (wanted.length > 0 && !wanted.includes(scene.name)) continue;
      await take(browser, scene, states.get(scene.role)!, places);
      console.log(`${scene.name}.png: ${scene.says}`);
    }
    const lines = SCENES.map(({ name, says, size }) => `## ${says}\n\n![${says}](${name}.png)\n\n${SIZES[size].width} x ${SIZES[size].height}\n`);
    writeFileSync(join(FOLDER, 'PICTURES.md'), `# Every screen\n\nThe invented orchestra and its invented piece. Remade by \`npm run pictures\`.\n\n${lines.join('\n')}`);
  } finally {
    await browser.close();
    await house.stop();
  }
}

await main(process.argv.slice(2));
