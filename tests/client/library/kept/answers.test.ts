import { describe, expect, it } from 'vitest';
import { answers } from '../../../../client/library/kept/answers.ts';
import { memoryKept, type KeptStorage } from '../../../../client/library/kept/storage.ts';

const AWAY = new Error('away');
const REFUSED = new Error('refused');
const NOT_KEPT = new Error('not kept');
const never = () => new Promise<never>(() => {});

function desk({ storage = memoryKept(), wait = never as (ms: number) => Promise<void> } = {}) {
  const seen = { owner: 'marek', lost: 0 };
  const kept = answers({ storage, owner: () => seen.owner, isAway: (fault) => fault === AWAY, notKept: () => NOT_KEPT, wait, onAway: () => (seen.lost += 1) });
  return { kept, seen };
}

describe('answers of the library', () => {
  it('are the library’s own while it answers, and the last ones without a line', async () => {
    const { kept, seen } = desk();
    expect(await kept.ask('/shelf', async () => 'one')).toEqual({ value: 'one', kept: false });
    expect(await kept.ask('/shelf', async () => 'two')).toEqual({ value: 'two', kept: false });
    expect(seen.lost).toBe(0);
    expect(await kept.ask('/shelf', () => Promise.reject(AWAY))).toEqual({ value: 'two', kept: true });
    expect(seen.lost).toBe(1);
  });

  it('that were never given are not made up, and a refusal stays a refusal', async () => {
    const { kept } = desk();
    await expect(kept.ask('/parts/a', () => Promise.reject(AWAY))).rejects.toBe(NOT_KEPT);
    await kept.ask('/parts/a', async () => 'mine');
    await expect(kept.ask('/parts/a', () => Promise.reject(REFUSED))).rejects.toBe(REFUSED);
  });

  it('of one person are never read by the next, not even one that came late', async () => {
    const { kept, seen } = desk();
    await kept.ask('/me', async () => 'Marek');
    let answer = (_: string) => {};
    const late = kept.ask('/shelf', () => new Promise<string>((resolve) => (answer = resolve)));
    seen.owner = 'ilse';
    answer('for Marek');
    await late;
    expect(await kept.recall('/me')).toBeUndefined();
    expect(await kept.recall('/shelf')).toBeUndefined();
  });

  it('leave the browser with their person, whole', async () => {
    const storage = memoryKept();
    const { kept, seen } = desk({ storage });
    await kept.ask('/me', async () => 'Marek');
    seen.owner = 'ilse';
    await kept.ask('/parts/b', async () => 'hers');
    await kept.ask('/parts/c', async () => 'hers');
    await kept.drop((path) => path === '/parts/b');
    expect(await storage.keys()).toEqual(['ilse /parts/c']);
  });

  it('are the kept ones where the library takes too long, and the library’s where nothing is kept', async () => {
    const { kept, seen } = desk({ wait: async () => undefined });
    let answer = (_: string) => {};
    const slow = () => new Promise<string>((resolve) => (answer = resolve));
    const first = kept.ask('/shelf', slow);
    answer('one');
    expect(await first).toEqual({ value: 'one', kept: false });
    expect(await kept.ask('/shelf', slow)).toEqual({ value: 'one', kept: true });
    expect(seen.lost).toBe(1);
  });

  it('come as before in a browser that keeps nothing', async () => {
    const broken = () => Promise.reject(new Error('no storage'));
    const storage: KeptStorage = { read: broken, change: broken, keys: broken, remove: broken };
    const { kept } = desk({ storage });
    expect(await kept.ask('/me', async () => 'Marek')).toEqual({ value: 'Marek', kept: false });
    await expect(kept.ask('/me', () => Promise.reject(AWAY))).rejects.toBe(NOT_KEPT);
    await expect(kept.drop(() => true)).resolves.toBeUndefined();
  });
});
