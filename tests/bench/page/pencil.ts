import type { Page } from 'playwright-core';

/** From each key press to the frame in which its mark is painted, and the length of a frame, in milliseconds. */
export async function pencilTimes(page: Page, presses: number): Promise<{ toMark: number[]; frame: number }> {
  const frame = await page.evaluate(() => new Promise<number>((resolve) => {
    const times: number[] = [];
    const step = (now: number) => {
      times.push(now);
      if (times.length < 121) return requestAnimationFrame(step);
      const gaps = times.slice(1).map((time, i) => time - times[i]!).sort((a, b) => a - b);
      resolve(gaps[gaps.length >> 1]!);
    };
    requestAnimationFrame(step);
  }));
  await page.evaluate(() => {
    const toMark: number[] = [];
    let pressed: number | null = null;
    addEventListener('keydown', ({ key, timeStamp }) => (pressed = /^[1-4]$/.test(key) ? timeStamp : null), true);
    new MutationObserver((changes) => {
      const drawn = changes.some(({ addedNodes, target }) => [...addedNodes, target].some((node) => node instanceof Element && (node.matches('[data-mark^="finger"][data-state="proposed"]') || node.querySelector('[data-mark^="finger"][data-state="proposed"]'))));
      if (!drawn || pressed === null) return;
      const from = pressed;
      pressed = null;
      requestAnimationFrame(() => {
        const { port1, port2 } = new MessageChannel();
        port1.onmessage = () => toMark.push(performance.now() - from);
        port2.postMessage(0);
      });
    }).observe(document.querySelector('main.pages')!, { childList: true, subtree: true, attributes: true, attributeFilter: ['data-mark'] });
    Object.assign(globalThis, { toMark });
  });
  for (let i = 0; i < presses; i += 1) {
    await page.keyboard.press(String(1 + (i % 4)));
    await page.waitForFunction((count) => (globalThis as unknown as { toMark: number[] }).toMark.length >= count, i + 1, { timeout: 20_000 });
    await page.keyboard.press('ArrowRight');
    await page.waitForTimeout(120);
  }
  return { toMark: await page.evaluate(() => (globalThis as unknown as { toMark: number[] }).toMark), frame };
}
