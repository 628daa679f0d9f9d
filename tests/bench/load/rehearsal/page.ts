import type { Browser, Page } from 'playwright-core';
import { openWindow } from '../../page/window.ts';
import type { Player } from '../furnish.ts';

interface Drawn {
  note: string;
  time: number;
}

/** A real page with a part open that notes when an inked mark on a note was painted. */
export interface WatchedPage {
  /** When a mark in ink was first painted on a note, in milliseconds since 1970. */
  drawn(): Promise<Map<string, number>>;
  /** Notes that are drawn and have no ink yet, in order. */
  notes(): Promise<string[]>;
  close(): Promise<void>;
}

export async function watchPage(browser: Browser, address: string, { cookie }: Player, part: string): Promise<WatchedPage> {
  const [name, value] = cookie.split('=') as [string, string];
  const { page, close } = await openWindow(browser);
  await page.context().addCookies([{ name, value, url: address }]);
  await page.goto(`${address}/stand/${part}`);
  await page.locator('main [data-note]').first().waitFor();
  await watch(page);
  return {
    drawn: async () => new Map((await page.evaluate(() => (globalThis as unknown as { drawn: Drawn[] }).drawn)).map(({ note, time }) => [note, time])),
    notes: () => page.evaluate(() => {
      const inked = new Set([...document.querySelectorAll('main.pages [data-state="adopted"]')].map((mark) => mark.getAttribute('data-on')));
      return [...document.querySelectorAll('main.pages [data-note]')].map((note) => note.getAttribute('data-note')!).filter((note) => !inked.has(note));
    }),
    close,
  };
}

function watch(page: Page): Promise<void> {
  return page.evaluate(() => {
    const drawn: Drawn[] = [];
    const known = new Set<string>();
    const inked = () => [...document.querySelectorAll('main.pages [data-state="adopted"]')].map((mark) => mark.getAttribute('data-on')!);
    inked().forEach((note) => known.add(note));
    new MutationObserver(() => {
      const fresh = inked().filter((note) => !known.has(note));
      if (fresh.length === 0) return;
      fresh.forEach((note) => known.add(note));
      requestAnimationFrame(() => {
        const { port1, port2 } = new MessageChannel();
        port1.onmessage = () => drawn.push(...fresh.map((note) => ({ note, time: performance.timeOrigin + performance.now() })));
        port2.postMessage(0);
      });
    }).observe(document.querySelector('main.pages')!, { childList: true, subtree: true, attributes: true, attributeFilter: ['data-state', 'data-on'] });
    Object.assign(globalThis, { drawn });
  });
}
