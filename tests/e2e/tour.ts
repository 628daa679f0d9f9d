import type { Browser, BrowserContextOptions, Page } from 'playwright-core';
import { openHouse, type House } from './house.ts';
import { Reader, signIn } from './reader.ts';
import type { Screen, Tour } from './screens.ts';
import { passSeason, sendTorn } from './season.ts';

export const SIZES = { laptop: { width: 1440, height: 900 }, tablet: { width: 1024, height: 1366 }, phone: { width: 390, height: 844 } } as const;
export type Size = keyof typeof SIZES;

type Kept = BrowserContextOptions['storageState'];

/** A house in which a season has passed, with everybody signed in once, so that pages of any size can be opened as any of them. */
export class Touring {
  readonly house: House;
  readonly #browser: Browser;
  readonly #kept = new Map<Screen['who'], Kept>();
  readonly #pages = new Map<string, Page>();
  readonly faults: string[] = [];
  #where: Omit<Tour, 'page'> | null = null;

  private constructor(house: House, browser: Browser) {
    this.house = house;
    this.#browser = browser;
  }

  static async begin(browser: Browser): Promise<Touring> {
    const touring = new Touring(await openHouse(true), browser);
    const { house } = touring;
    const enter = async (who: 'librarian' | 'principal') => {
      const context = await browser.newContext();
      await signIn(await context.newPage(), house.links.get(who)!);
      touring.#kept.set(who, await context.storageState());
      return context;
    };
    const [librarian, principal] = [await enter('librarian'), await enter('principal')];
    const reader = new Reader(librarian, house.origin);
    const { programmes } = await reader.shelf();
    const part = (await reader.work('Low Water')).parts[0]!.id;
    const bare = (await (await librarian.request.post(`${house.origin}/api/programmes`, { data: { title: 'Ebb' }, headers: { origin: house.origin } })).json()) as { id: string };
    const season = await passSeason(house.origin, { librarian, principal });
    await sendTorn(house.origin, librarian, season.programme);
    touring.#where = { origin: house.origin, part, programme: programmes[0]!.id, bare: bare.id, season };
    for (const context of [librarian, principal]) await context.close();
    return touring;
  }

  /** One page a person and size, opened when first asked for. */
  async #page(who: Screen['who'], viewport: { width: number; height: number }): Promise<Page> {
    const name = `${who} ${viewport.width}`;
    const known = this.#pages.get(name);
    if (known) return known;
    const kept = this.#kept.get(who);
    const context = await this.#browser.newContext({ viewport, hasTouch: viewport.width < 1200, ...(kept ? { storageState: kept } : {}), reducedMotion: 'reduce' });
    const page = await context.newPage();
    page.setDefaultTimeout(40_000);
    page.on('pageerror', (fault) => this.faults.push(`${name}: ${fault.message}`));
    page.on('console', (line) => /Content Security Policy/.test(line.text()) && this.faults.push(`${name}: ${line.text()}`));
    this.#pages.set(name, page);
    return page;
  }

  async open(screen: Screen, viewport: { width: number; height: number }): Promise<Page> {
    const page = await this.#page(screen.who, viewport);
    await screen.open({ ...this.#where!, page });
    return page;
  }

  async close(): Promise<void> {
    for (const page of this.#pages.values()) await page.context().close();
    await this.house.stop();
  }
}

/** The light of the stand or of day, as the key for it would set it. */
export const light = (page: Page, which: 'day' | 'stand'): Promise<void> => page.evaluate((now) => void (document.documentElement.dataset.light = now), which);
