import { join } from 'node:path';
import type { Browser } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { startBrowser } from '../support/browser.ts';
import { violations } from './axe.ts';
import { SCREENS } from './screens.ts';
import { light, SIZES, Touring, type Size } from './tour.ts';

const PICTURES = process.env.BOWLINE_PICTURES;

/** Screens that are laid out otherwise on glass; with BOWLINE_SCREENS=all every screen is looked at in every size. */
const ON_GLASS = new Set(['sign-in', 'door', 'my-sign-in', 'shelf', 'folder', 'stand-open', 'stand-keys', 'section', 'archive', 'revisions', 'changed', 'season']);
const screensAt = (size: Size) => SCREENS.filter(({ name }) => process.env.BOWLINE_SCREENS === 'all' || !['tablet', 'phone'].includes(size) || ON_GLASS.has(name));

/** Colours are the same in every size. */
const LIGHTS = { laptop: ['day', 'stand'], tablet: ['day'], phone: ['day'] } as const;

let browser: Browser, touring: Touring;

beforeAll(async () => {
  browser = await startBrowser();
  touring = await Touring.begin(browser);
}, 240_000);

afterAll(async () => {
  await touring?.close();
  await browser?.close();
});

describe.each(Object.keys(SIZES) as Size[])('at the size of a %s', { timeout: 240_000 }, (size) => {
  it.each(screensAt(size).map((screen) => [screen.name, screen] as const))('%s breaks nothing of WCAG 2.2 AA that axe knows of, and nothing of it runs past the edge', async (name, screen) => {
    const page = await touring.open(screen, SIZES[size]);
    const found: string[] = [];
    for (const which of LIGHTS[size]) {
      await light(page, which);
      found.push(...(await violations(page, which === 'day' ? 'all' : 'colours')).map((line) => `${which} ${line}`));
      if (PICTURES) await page.screenshot({ path: join(PICTURES, `${name}-${size}-${which}.png`) });
    }
    await light(page, 'day');
    expect(found).toEqual([]);
    const past = await page.evaluate(() => ({ ofMain: document.querySelector('main')!.scrollWidth - document.querySelector('main')!.clientWidth, below: document.documentElement.scrollHeight - innerHeight }));
    expect(past).toEqual({ ofMain: 0, below: 0 });
  });
});

it('no page met a fault on the way', () => {
  expect(touring.faults).toEqual([]);
});
