import { describe, expect, it } from 'vitest';
import { z } from 'zod';
import { newId } from '../../../client/agreement/newId.ts';

describe('a new id', () => {
  const ids = Array.from({ length: 2000 }, newId);

  it('is a version 4 uuid, never twice', () => {
    expect(ids.filter((id) => !z.uuidv4().safeParse(id).success)).toEqual([]);
    expect(new Set(ids).size).toBe(ids.length);
  });

  it('has chance in every place but the version', () => {
    const fixed = Array.from({ length: 36 }, (_, place) => place).filter((place) => new Set(ids.map((id) => id[place])).size === 1);
    expect(fixed).toEqual([8, 13, 14, 18, 23]);
  });
});
