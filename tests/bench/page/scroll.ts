import type { Page } from 'playwright-core';

/** Long tasks (over 50 ms) while the whole part is scrolled past, 2,400 px a second, in milliseconds each. */
export function scrollTasks(page: Page): Promise<{ tasks: number[]; frames: number[] }> {
  return page.evaluate(() => new Promise((resolve) => {
    const tasks: number[] = [];
    const observer = new PerformanceObserver((list) => tasks.push(...list.getEntries().map(({ duration }) => duration)));
    observer.observe({ type: 'longtask' });
    const pages = document.querySelector('main.pages')!;
    pages.scrollTop = 0;
    const frames: number[] = [];
    let last = performance.now();
    const step = (now: number) => {
      frames.push(now - last);
      last = now;
      pages.scrollTop += 40;
      if (pages.scrollTop + pages.clientHeight < pages.scrollHeight - 2) return requestAnimationFrame(step);
      setTimeout(() => {
        observer.disconnect();
        resolve({ tasks, frames });
      }, 500);
    };
    requestAnimationFrame(step);
  }));
}
