import { expect } from 'vitest';
import { seriousViolations } from './axe.ts';
import type { Player } from './player.ts';

/** Two fingerings of the passage in hand laid about one staff by key; the caret's note and the one pointed at are the same in every picture. */
export async function comparesTwo(player: Player, notes: readonly string[]): Promise<void> {
  const { page } = player;
  await player.press('ArrowDown', 'b');
  const compare = page.locator('.compare');
  await compare.waitFor();
  expect(await compare.getAttribute('aria-label')).toBe('Fingering a above, fingering b below');
  for (const side of ['a', 'b']) {
    const drawn = await compare.locator(`[data-side="${side}"] [data-hand-note]`).evaluateAll((all) => all.map((one) => one.getAttribute('data-hand-note')));
    expect(drawn).toEqual(notes);
  }
  await player.press('ArrowRight');
  for (const [side, i] of [['a', 0], ['b', 1]] as const) {
    await compare.locator(`[data-side="${side}"] [data-hand-note="${notes[1]}"].lit`).waitFor();
    expect(await compare.locator('[data-on-board]').nth(i).getAttribute('data-on-board')).toBe(notes[1]);
  }
  await compare.locator('.fold-word').click();
  await compare.locator(`[data-step="${notes[2]}"]`).hover();
  await page.locator(`.system [data-pointed="${notes[2]}"]`).waitFor();
  expect(await compare.locator('[data-on-board]').first().getAttribute('data-on-board')).toBe(notes[2]);
  await compare.locator(`[data-step="${notes[0]}"] button`).focus();
  await page.locator(`.system [data-pointed="${notes[0]}"]`).waitFor();
  expect(await seriousViolations(page)).toEqual([]);
  await page.mouse.move(2, 2);
  await player.press('ArrowLeft', 'ArrowUp', 'Escape');
  await compare.waitFor({ state: 'detached' });
}

/** The history of a measure in hand, opened by key alone, read from the top, and put away. */
export async function readsHistory(player: Player, measure: string, lines: readonly RegExp[]): Promise<void> {
  const { page } = player;
  await player.goTo(measure);
  await player.press('q');
  const history = page.getByRole('region', { name: `The history of measure ${measure}` });
  await history.locator('li').first().waitFor();
  expect(await page.evaluate(() => document.activeElement?.textContent)).toBe(`The history of measure ${measure}`);
  const told = await history.locator('li').allInnerTexts();
  for (const line of lines) expect(told.filter((text) => line.test(text))).toHaveLength(1);
  expect(await history.locator('[data-moment]').count()).toBe(told.length);
  expect(await seriousViolations(page)).toEqual([]);
  await player.press('q');
  await history.waitFor({ state: 'detached' });
  await player.press('Escape');
}
