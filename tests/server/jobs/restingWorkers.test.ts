import { describe, expect, it } from 'vitest';
import { createRestingWorkers } from '../../../server/jobs/restingWorkers.ts';

describe('workers at rest', () => {
  it('the one that came back is taken again, and only once', async () => {
    const workers = createRestingWorkers(64, 60_000);
    const first = workers.take();
    workers.giveBack(first);
    const again = workers.take();
    const other = workers.take();
    expect(again).toBe(first);
    expect(other).not.toBe(first);
    await Promise.all([again.terminate(), other.terminate()]);
  });

  it('one that ended while it rested is not taken', async () => {
    const workers = createRestingWorkers(64, 60_000);
    const first = workers.take();
    workers.giveBack(first);
    await first.terminate();
    const next = workers.take();
    expect(next).not.toBe(first);
    await next.terminate();
  });

  it('where none rests, what comes back goes', async () => {
    const workers = createRestingWorkers(64, 0);
    const first = workers.take();
    const gone = new Promise((resolve) => first.once('exit', resolve));
    workers.giveBack(first);
    await gone;
    const next = workers.take();
    expect(next).not.toBe(first);
    await next.terminate();
  });
});
