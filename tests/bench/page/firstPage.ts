import type { Browser, Page } from 'playwright-core';
import type { Laid } from './house.ts';
import { openWindow } from './window.ts';

/** Milliseconds from the beginning of the navigation until every system in view is drawn and painted. */
export async function standShown(browser: Browser, { house, state }: Laid, part: string): Promise<number> {
  const { page, close } = await openWindow(browser, { storageState: state });
  try {
    await page.addInitScript(() => {
      const look = () => {
        const view = document.querySelector('main.pages')?.getBoundingClientRect();
        const rows = [...document.querySelectorAll('[data-system]')].filter((row) => {
          const { top, bottom } = row.getBoundingClientRect();
          return view && bottom > view.top && top < view.bottom;
        });
        if (!rows.length || !rows.every((row) => row.querySelector('svg.system'))) return requestAnimationFrame(look);
        const { port1, port2 } = new MessageChannel();
        port1.onmessage = () => Object.assign(globalThis, { shownAt: performance.now() });
        port2.postMessage(0);
      };
      requestAnimationFrame(look);
    });
    await page.goto(`${house.origin}/stand/${part}`, { waitUntil: 'commit' });
    return await shownAt(page);
  } finally {
    await close();
  }
}

/** The same for the engraver alone. */
export async function bareShown(browser: Browser, origin: string): Promise<number> {
  const { page, close } = await openWindow(browser);
  try {
    await page.goto(origin, { waitUntil: 'commit' });
    return await shownAt(page);
  } finally {
    await close();
  }
}

async function shownAt(page: Page): Promise<number> {
  await page.waitForFunction(() => 'shownAt' in globalThis, undefined, { timeout: 600_000, polling: 200 });
  return page.evaluate(() => (globalThis as unknown as { shownAt: number }).shownAt);
}
