import { readFileSync } from 'node:fs';
import type { Locator, Page } from 'playwright-core';

/** The librarian at the shelf and in the folders. */
export class Librarian {
  readonly page: Page;
  readonly #origin: string;

  constructor(page: Page, origin: string) {
    this.page = page;
    this.#origin = origin;
  }

  async folder(programme: string): Promise<void> {
    await this.page.goto(`${this.#origin}/shelf`);
    await this.page.getByRole('link', { name: programme }).click();
    await this.page.getByRole('table').waitFor();
  }

  async layScore(name: string, text: string): Promise<void> {
    await this.page.getByLabel('lay a score', { exact: true }).setInputFiles({ name, mimeType: 'application/vnd.recordare.musicxml+xml', buffer: Buffer.from(text) });
  }

  /** Chooses a part in the folder; it is pressed then. */
  async choose(work: string, part: string): Promise<void> {
    const cell = this.page.getByRole('button', { name: `${work}, ${part}:` });
    if ((await cell.getAttribute('aria-pressed')) !== 'true') await cell.click();
    await this.sentence().filter({ hasText: `${part}.` }).waitFor();
  }

  async press(word: string): Promise<void> {
    await this.page.getByRole('button', { name: word, exact: true }).click();
  }

  /** The text of the file a link gives. */
  async take(name: string): Promise<{ fileName: string; text: string }> {
    const [download] = await Promise.all([this.page.waitForEvent('download'), this.page.getByRole('link', { name, exact: true }).click()]);
    return { fileName: download.suggestedFilename(), text: readFileSync(await download.path(), 'utf8') };
  }

  sentence(): Locator {
    return this.page.getByRole('status');
  }
}
