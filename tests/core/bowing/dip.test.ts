import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { BOW_CHANGE, bowChangeAudibility, hidingAdvice, levelDip } from '../../../core/bowing/dip.ts';

interface Vector {
  name: string;
  in: { n: number; times: number[]; sigma: number; D?: number; t3?: number };
  out: { sd: number; s: number; a: number; loss: number; dL: number; B: number; P: number };
}
const corpus = process.env.CORPUS_DIR;
const vectors = corpus ? (JSON.parse(readFileSync(join(corpus, 'handbook/sound-vectors.json'), 'utf8')) as { bow: Vector[] }).bow : [];

describe.skipIf(!corpus)('the bow vectors of the corpus (skipped without CORPUS_DIR)', () => {
  it('there are fifteen', () => expect(vectors).toHaveLength(15));

  it.each(vectors)('$name comes out within 0.01', (vector) => {
    const { n, times, sigma, D = BOW_CHANGE.depth, t3 = BOW_CHANGE.below3 } = vector.in;
    const { index, ...rest } = bowChangeAudibility(times, n, sigma, { depth: D, below3: t3 });
    const found: Record<string, number> = { ...rest, P: index };
    for (const [key, value] of Object.entries(vector.out)) expect(Math.abs(found[key]! - value), key).toBeLessThanOrEqual(0.01);
  });
});

describe('the level of a section', () => {
  const times = fc.array(fc.double({ min: 0, max: 5, noNaN: true }), { minLength: 1, maxLength: 12 });
  const dL = (changes: readonly number[], players: number, scatter = 0.03) => bowChangeAudibility(changes, players, scatter).dL;

  it('falls further the more change at once, and less the more play', () => {
    fc.assert(fc.property(fc.integer({ min: 1, max: 11 }), fc.integer({ min: 12, max: 40 }), (k, n) => {
      const together = (count: number) => new Array<number>(count).fill(0);
      expect(dL(together(k + 1), n)).toBeGreaterThan(dL(together(k), n));
      expect(dL(together(k), n + 1)).toBeLessThan(dL(together(k), n));
    }));
  });

  it('depends only on the share of players when they change at once without scatter', () => {
    fc.assert(fc.property(fc.integer({ min: 1, max: 6 }), fc.integer({ min: 6, max: 20 }), (k, n) => {
      expect(dL(new Array<number>(2 * k).fill(1), 2 * n, 0)).toBeCloseTo(dL(new Array<number>(k).fill(1), n, 0), 9);
    }));
  });

  it('does not depend on the order of the changes', () => {
    fc.assert(fc.property(times, (list) => {
      expect(dL([...list].reverse(), 12)).toBeCloseTo(dL(list, 12), 9);
    }));
  });

  it('changes 150 ms apart or more count as single ones, within 0.01 dB', () => {
    fc.assert(fc.property(fc.array(fc.double({ min: 0.15, max: 1, noNaN: true }), { minLength: 1, maxLength: 8 }), (gaps) => {
      const list = gaps.map((_, i) => gaps.slice(0, i + 1).reduce((a, b) => a + b, 0));
      expect(Math.abs(dL(list, 12) - dL([0], 12))).toBeLessThan(0.01);
    }));
  });

  it('is whole again far from every change', () => {
    expect(levelDip([1], 4, [0, 1, 2], 0).map((value) => Number(value.toFixed(2)))).toEqual([0, 0.96, 0]);
  });

  it('says plainly to four players, and not to five, that staggering hides nothing', () => {
    expect(hidingAdvice(4)).toContain('cannot hide');
    expect(hidingAdvice(5)).toBeUndefined();
  });
});
