import { afterEach, beforeEach, describe, expect, it, vi } from 'vitest';
import { halfSaid, keepHalfSaid } from '../../../../client/tools/line/halfSaid.ts';

describe('words begun and left', () => {
  beforeEach(() => {
    const kept = new Map<string, string>();
    vi.stubGlobal('sessionStorage', { getItem: (key: string) => kept.get(key) ?? null, setItem: (key: string, text: string) => kept.set(key, text), removeItem: (key: string) => kept.delete(key) });
  });
  afterEach(() => vi.unstubAllGlobals());

  it('are there again, each for what it was about, until they are said', () => {
    keepHalfSaid('me/part/why', 'Half a thought');
    expect([halfSaid('me/part/why'), halfSaid('me/part/say 3'), halfSaid('you/part/why')]).toEqual(['Half a thought', '', '']);
    keepHalfSaid('me/part/why', '');
    expect(halfSaid('me/part/why')).toBe('');
  });
});
