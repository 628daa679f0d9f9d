import { describe, expect, it } from 'vitest';
import { sidesAfter } from '../../../client/fingering/sides.ts';

describe('two fingerings side by side', () => {
  it('begin with the first one on the other side, or the second where the first itself is laid', () => {
    expect(sidesAfter(null, 'b', 3, 5)).toEqual({ a: 0, b: 3 });
    expect(sidesAfter(null, 'a', 3, 5)).toEqual({ a: 3, b: 0 });
    expect(sidesAfter(null, 'a', 0, 5)).toEqual({ a: 0, b: 1 });
  });

  it('keep the other side while one is exchanged', () => {
    expect(sidesAfter({ a: 2, b: 3 }, 'b', 4, 5)).toEqual({ a: 2, b: 4 });
  });

  it('are never one beside itself', () => {
    for (let a = 0; a < 4; a++) for (let b = 0; b < 4; b++) for (const side of ['a', 'b'] as const) for (let laid = 0; laid < 4; laid++) {
      if (a === b) continue;
      const after = sidesAfter({ a, b }, side, laid, 4);
      if (after) expect(after.a).not.toBe(after.b);
    }
  });

  it('stay when the one that lies there is laid there again: a on the first, b on the second lays both', () => {
    const before = sidesAfter(null, 'a', 0, 5);
    expect(sidesAfter(before, 'b', 1, 5)).toEqual({ a: 0, b: 1 });
  });

  it('are none where there is only one', () => {
    expect(sidesAfter(null, 'a', 0, 1)).toBeNull();
  });
});
