import { describe, expect, it } from 'vitest';
import { isPassword, keptForm } from '../../../server/signIn/passwords.ts';
import { createTurns } from '../../../server/signIn/turns.ts';

describe('a password', () => {
  it('is kept as argon2id with 19 MiB, two passes and salt of its own, and known again exactly as typed', async () => {
    const [one, other] = [await keptForm(' Ünder the Quay '), await keptForm(' Ünder the Quay ')];
    expect(one).toMatch(/^\$argon2id\$v=19\$m=19456,t=2,p=1\$/);
    expect(one).not.toBe(other);
    expect(await isPassword(' Ünder the Quay ', one)).toBe(true);
    for (const near of ['Ünder the Quay', ' ünder the quay ', ' Ünder the Quay', 'Under the Quay']) expect(await isPassword(near, one)).toBe(false);
  });

  it('nobody has is no password, whatever is typed', async () => {
    expect(await isPassword('', null)).toBe(false);
    expect(await isPassword('anything at all', null)).toBe(false);
  });
});

describe('turns', () => {
  it('let so many work at once, the next in order, and turn away who finds the line too long', async () => {
    const turns = createTurns(2, 1);
    const [ends, began]: [(() => void)[], number[]] = [[], []];
    const work = (n: number) => turns(() => new Promise<number>((resolve) => (began.push(n), ends.push(() => resolve(n)))));
    const [first, second, third, fourth] = [work(1), work(2), work(3), work(4)];
    expect(await fourth).toBeNull();
    expect(began).toEqual([1, 2]);
    ends[0]!();
    expect(await first).toBe(1);
    expect(began).toEqual([1, 2, 3]);
    ends[1]!();
    ends[2]!();
    expect([await second, await third]).toEqual([2, 3]);
  });

  it('go on after one that failed', async () => {
    const turns = createTurns(1, 5);
    await expect(turns(() => Promise.reject(new Error('broken')))).rejects.toThrow('broken');
    expect(await turns(async () => 'next')).toBe('next');
  });
});
