import type { Browser, BrowserContextOptions, Page } from 'playwright-core';

/** A window of its own with an empty cache, on a laptop's screen. */
export async function openWindow(browser: Browser, options: BrowserContextOptions = {}): Promise<{ page: Page; close(): Promise<void> }> {
  const context = await browser.newContext({ viewport: { width: 1440, height: 900 }, ...options });
  // Functions that are sent to the page carry this call where TypeScript is stripped by esbuild.
  await context.addInitScript({ content: 'globalThis.__name = (named) => named;' });
  const page = await context.newPage();
  page.setDefaultTimeout(600_000);
  return { page, close: () => context.close() };
}
