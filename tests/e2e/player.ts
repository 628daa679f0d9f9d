import type { Locator, Page } from 'playwright-core';

/** A person at the stand: does everything by keyboard, reads what is on the page. */
export class Player {
  readonly page: Page;
  readonly #origin: string;

  constructor(page: Page, origin: string) {
    this.page = page;
    this.#origin = origin;
  }

  async stand(part: string): Promise<void> {
    await this.page.goto(`${this.#origin}/stand/${part}`);
    await this.page.locator('[data-note]').first().waitFor({ timeout: 120_000 });
  }

  async press(...keys: string[]): Promise<void> {
    for (const key of keys) await this.page.keyboard.press(key);
  }

  /** Moves to the first note of a measure by its printed number. */
  async goTo(printed: string): Promise<void> {
    await this.press('g');
    await this.write(/Go to measure/, printed);
    await this.page.getByRole('status').filter({ hasText: `Measure ${printed},` }).waitFor();
  }

  /** Writes on the ledge's line and lays it down. */
  async write(label: RegExp, text: string): Promise<void> {
    await this.page.getByLabel(label).fill(text);
    await this.press('Enter');
  }

  /** Lays what is pencilled, with a sentence of why. */
  async lay(why: string): Promise<void> {
    await this.press('Enter');
    await this.write(/Why, in a sentence/, why);
  }

  /** Signs on a note by its id, e.g. `mark(note, 'finger:2', 'proposed')`. */
  mark(note: string, name: string, state: string): Locator {
    return this.page.locator(`main [data-on="${note}"][data-mark="${name}"][data-state="${state}"]`);
  }

  finding(rule: string, note: string): Locator {
    return this.page.locator(`main .marks [data-finding="${rule}"][data-on="${note}"]`);
  }

  /** The facts of a slip in an open measure. */
  slip(why: string): Locator {
    return this.page.getByRole('article').filter({ hasText: why });
  }

  sentence(): Locator {
    return this.page.getByRole('status');
  }
}
