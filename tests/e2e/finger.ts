import type { Locator, Page } from 'playwright-core';

/** A person who has nothing but a finger: every step is a touch, and letters come from the keyboard on the glass. */
export class Finger {
  readonly page: Page;

  constructor(page: Page) {
    this.page = page;
  }

  async tap(name: string | RegExp, role: 'button' | 'link' = 'button'): Promise<void> {
    await this.page.getByRole(role, { name, ...(typeof name === 'string' ? { exact: true } : {}) }).tap();
  }

  /** From a sign-in link over shelf and folder to the stand. */
  async arrive(link: string, programme: string, part: RegExp): Promise<void> {
    await this.page.goto(link);
    await this.tap(programme, 'link');
    const cell = this.page.getByRole('button', { name: part });
    await cell.waitFor();
    if ((await cell.getAttribute('aria-pressed')) !== 'true') await cell.tap();
    await cell.tap();
    await this.page.locator('main [data-note]').first().waitFor({ timeout: 120_000 });
  }

  /** On a phone the signs and the words beside them come when they are asked for. */
  async markingOn(): Promise<void> {
    const word = this.page.getByRole('button', { name: 'mark', exact: true });
    if ((await word.count()) && (await word.getAttribute('aria-pressed')) === 'false') await word.tap();
  }

  async markingOff(): Promise<void> {
    const word = this.page.getByRole('button', { name: 'mark', exact: true });
    if ((await word.count()) && (await word.getAttribute('aria-pressed')) === 'true') await word.tap();
  }

  async goTo(measure: string): Promise<void> {
    await this.markingOn();
    await this.tap('go to');
    await this.write(/Go to measure/, measure, 'go');
    await this.sentence().filter({ hasText: `Measure ${measure},` }).waitFor();
  }

  async write(label: RegExp, text: string, button: string): Promise<void> {
    await this.page.getByLabel(label).tap();
    await this.page.getByLabel(label).fill(text);
    await this.tap(button);
  }

  note(id: string): Locator {
    return this.page.locator(`main .hits [data-note="${id}"]`);
  }

  async #middle(id: string): Promise<{ x: number; y: number }> {
    const { x, y, width, height } = (await this.note(id).boundingBox())!;
    return { x: x + width / 2, y: y + height / 2 };
  }

  /** Along the staff from note to note, in steps, as a finger goes. */
  async dragOver(from: string, to: string): Promise<void> {
    const [a, b] = [await this.#middle(from), await this.#middle(to)];
    const glass = await this.page.context().newCDPSession(this.page);
    const touch = (type: 'touchStart' | 'touchMove' | 'touchEnd', points: { x: number; y: number }[]) => glass.send('Input.dispatchTouchEvent', { type, touchPoints: points });
    await touch('touchStart', [a]);
    for (let i = 1; i <= 12; i++) await touch('touchMove', [{ x: a.x + ((b.x - a.x) * i) / 12, y: a.y + ((b.y - a.y) * i) / 12 }]);
    // A finger rests before it lifts: let go in full swing, it is a fling to the browser, and the next touch only ends that.
    for (let i = 0; i < 4; i++) {
      await this.page.waitForTimeout(60);
      await touch('touchMove', [{ x: b.x + (i % 2), y: b.y }]);
    }
    await touch('touchEnd', []);
    await glass.detach();
  }

  /** A swipe on something, sideways or up and down, by so many pixels. */
  async swipe(on: Locator, dx: number, dy: number): Promise<void> {
    await on.scrollIntoViewIfNeeded();
    const { x, y, width, height } = (await on.boundingBox())!;
    const start = { x: x + width / 2 - dx / 2, y: y + height / 2 - dy / 2 };
    const glass = await this.page.context().newCDPSession(this.page);
    await glass.send('Input.dispatchTouchEvent', { type: 'touchStart', touchPoints: [start] });
    for (let i = 1; i <= 8; i++) await glass.send('Input.dispatchTouchEvent', { type: 'touchMove', touchPoints: [{ x: start.x + (dx * i) / 8, y: start.y + (dy * i) / 8 }] });
    await glass.send('Input.dispatchTouchEvent', { type: 'touchEnd', touchPoints: [] });
    await glass.detach();
  }

  slip(why: string): Locator {
    return this.page.getByRole('article').filter({ hasText: why });
  }

  sentence(): Locator {
    return this.page.locator('footer').getByRole('status');
  }
}
