import { describe, expect, it } from 'vitest';
import { isFull, isUnavailable } from '../../../server/store/unavailable.ts';

/** As Prisma hands on what PostgreSQL said; seen from its version 7.10. */
const byPrisma = (originalCode: string) => Object.assign(new Error('Raw query failed'), { code: 'P2039', meta: { driverAdapterError: Object.assign(new Error('said'), { cause: { kind: 'postgres', originalCode } }) } });
const byPg = (code: string) => Object.assign(new Error('said'), { code });

describe('what was thrown by the database', () => {
  it.each(['57P03', '08006', '53100'])('%s says ask again later, by whichever way it comes', (code) => {
    for (const reason of [byPg(code), byPrisma(code), new Error('around it', { cause: byPg(code) })]) expect(isUnavailable(reason)).toBe(true);
  });

  it('a disk without room is told from a database that is away', () => {
    expect([byPg('53100'), byPrisma('53100'), byPg('ENOSPC'), byPg('57P03'), byPrisma('57P03')].map(isFull)).toEqual([true, true, true, false, false]);
  });

  it('a bug stays a bug', () => {
    for (const reason of [byPg('23505'), byPrisma('42703'), new TypeError('x is not a function'), undefined, 'text']) expect(isUnavailable(reason)).toBe(false);
  });
});
