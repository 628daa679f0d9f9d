import type { Browser } from 'playwright-core';
import { gzipSync } from 'node:zlib';
import type { Laid } from './house.ts';
import { openWindow } from './window.ts';

/** Gzipped bytes a browser asks for before the engraver: page, scripts, styles, fonts; and what the engraver weighs. */
export async function firstLoad(browser: Browser, { house, state }: Laid): Promise<{ bytes: number; files: { path: string; bytes: number }[] }> {
  const { page, close } = await openWindow(browser, { storageState: state });
  const bodies: Promise<{ path: string; bytes: number }>[] = [];
  try {
    page.on('response', (response) => {
      const path = new URL(response.url()).pathname;
      if (path.startsWith('/api')) return;
      bodies.push(response.body().then((body) => ({ path, bytes: gzipSync(body).length })));
    });
    await page.goto(`${house.origin}/shelf`, { waitUntil: 'networkidle' });
    const files = await Promise.all(bodies);
    return { bytes: files.reduce((sum, { bytes }) => sum + bytes, 0), files };
  } finally {
    await close();
  }
}
