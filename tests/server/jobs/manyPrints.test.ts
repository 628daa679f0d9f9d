import { afterAll, beforeAll, expect, it } from 'vitest';
import { printPart } from '../../../server/jobs/documents.ts';
import { fileOrder } from '../../support/printOrders.ts';
import { demoFile } from '../../support/demoFile.ts';

let begun = 0;
const count = () => (begun += 1);
beforeAll(() => void process.on('worker', count));
afterAll(() => void process.off('worker', count));

it('a copy for every desk is printed by one worker, and each copy as if it were the first', async () => {
  const order = await fileOrder(demoFile(), 'P5', 3);
  const sizes: number[] = [];
  for (const form of ['svg', 'mei', 'svg'] as const) {
    const made = await printPart({ ...order, form });
    if (!made.ok) throw new Error(made.trouble.text);
    sizes.push(made.pages);
  }
  expect(begun).toBe(1);
  expect(sizes[0]).toBeGreaterThan(0);
  expect(sizes[2]).toBe(sizes[0]);
}, 120_000);
