import { expect, it } from 'vitest';
import { startBrowser } from '../support/browser.ts';

it('a real browser starts from what npm installed and runs WebAssembly in a worker', async () => {
  const browser = await startBrowser();
  try {
    const page = await browser.newPage();
    const sum = await page.evaluate(() => new Promise<number>((resolve) => {
      const code = 'WebAssembly.instantiate(new Uint8Array([0,97,115,109,1,0,0,0])).then(() => postMessage(20 + 22))';
      new Worker(URL.createObjectURL(new Blob([code]))).onmessage = ({ data }) => resolve(data as number);
    }));
    expect(sum).toBe(42);
  } finally {
    await browser.close();
  }
});
