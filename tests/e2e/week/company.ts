import type { Browser, BrowserContext, Page } from 'playwright-core';
import { Player } from '../player.ts';
import { Reader, signIn } from '../reader.ts';

export interface Member {
  page: Page;
  player: Player;
  reader: Reader;
}

/** Everybody of an ensemble at a browser of their own. */
export class Company {
  readonly #browser: Browser;
  readonly #origin: string;
  /** What any page threw. */
  readonly faults: string[] = [];

  constructor(browser: Browser, origin: string) {
    this.#browser = browser;
    this.#origin = origin;
  }

  async enter(who: string, link: string): Promise<Member> {
    const context: BrowserContext = await this.#browser.newContext({ viewport: { width: 1440, height: 900 }, reducedMotion: 'reduce', acceptDownloads: true });
    const page = await context.newPage();
    page.setDefaultTimeout(60_000);
    page.on('pageerror', (fault) => this.faults.push(`${who}: ${fault.message}`));
    // A page that asks for paper is printed by the test itself.
    await page.addInitScript(() => (window.print = () => document.body.setAttribute('data-printed', 'yes')));
    await signIn(page, link);
    return { page, player: new Player(page, this.#origin), reader: new Reader(context, this.#origin) };
  }
}
