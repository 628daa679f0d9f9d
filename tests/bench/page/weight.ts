import type { Browser } from 'playwright-core';
import { gzipSync } from 'node:zlib';
import type { Laid } from './house.ts';

/** Gzipped bytes a browser asks for before the engraver: page, scripts, styles, fonts; and what the engraver weighs. */
export async function firstLoad(browser: Browser, { house, state }: Laid): Promise<{ bytes: number; files: { path: string; bytes: number }[] }> {
  const context = await browser.newContext({ storageState: state, viewport: { width: 1440, height: 900 } });
  const files: { path: string; bytes: number }[] = [];
  try {
    const page = await context.newPage();
    page.on('response', (response) => {
      const path = new URL(response.url()).pathname;
      if (path.startsWith('/api')) return;
      void response.body().then((body) => files.push({ path, bytes: gzipSync(body).length }), () => {});
    });
    await page.goto(`${house.origin}/shelf`, { waitUntil: 'networkidle' });
    return { bytes: files.reduce((sum, { bytes }) => sum + bytes, 0), files };
  } finally {
    await context.close();
  }
}
