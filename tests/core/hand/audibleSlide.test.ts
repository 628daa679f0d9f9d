import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { audibleSlide, type SlideSetting } from '../../../core/hand/audibleSlide.ts';

const folder = process.env.CORPUS_DIR;

interface Vector {
  name: string;
  in: Record<string, number>;
  out: { A: number; P: number };
}

const settingOf = ({ S, T, G, n, m, R, RT, f, cover, maskDb }: Record<string, number>): SlideSetting => ({
  semitones: S!, seconds: T!,
  ...(G === undefined ? {} : { threshold: G }), ...(n === undefined ? {} : { players: n }), ...(m === undefined ? {} : { sliding: m }),
  ...(R === undefined ? {} : { room: R }), ...(RT === undefined ? {} : { reverberation: RT }), ...(f === undefined ? {} : { hertz: f }),
  ...(cover === undefined ? {} : { cover }), ...(maskDb === undefined ? {} : { othersDb: maskDb }),
});

describe.skipIf(!folder)('the slide index against worked vectors (needs CORPUS_DIR)', () => {
  const { slide } = folder ? (JSON.parse(readFileSync(join(folder, 'handbook/sound-vectors.json'), 'utf8')) as { slide: Vector[] }) : { slide: [] };

  it('there are fifteen of them', () => expect(slide).toHaveLength(15));

  it.each(slide)('$name', (vector) => {
    const { amount, index } = audibleSlide(settingOf(vector.in));
    expect(Math.abs(amount - vector.out.A)).toBeLessThan(0.01);
    expect(Math.abs(index - vector.out.P)).toBeLessThan(0.01);
  });
});

describe('the slide index', () => {
  const settings = fc.record({ semitones: fc.double({ min: 0, max: 24, noNaN: true }), seconds: fc.double({ min: 0, max: 0.5, noNaN: true }), players: fc.integer({ min: 2, max: 16 }), sliding: fc.constant(1), room: fc.double({ min: 0, max: 6, noNaN: true }), cover: fc.double({ min: 0, max: 0.05, noNaN: true }) });
  const grown = fc.double({ min: 0, max: 0.5, noNaN: true });

  it('never falls when the interval, the time or the number who slide grows', () => {
    fc.assert(fc.property(settings, grown, (setting, more) => {
      const { amount } = audibleSlide(setting);
      expect(audibleSlide({ ...setting, semitones: setting.semitones + more }).amount).toBeGreaterThanOrEqual(amount - 1e-9);
      expect(audibleSlide({ ...setting, seconds: setting.seconds + more }).amount).toBeGreaterThanOrEqual(amount - 1e-9);
      expect(audibleSlide({ ...setting, sliding: 2 }).amount).toBeGreaterThanOrEqual(amount - 1e-9);
    }));
  });

  it('never rises with more players, a longer cover or a livelier room', () => {
    fc.assert(fc.property(settings, grown, (setting, more) => {
      const { amount } = audibleSlide(setting);
      expect(audibleSlide({ ...setting, players: setting.players + 1 }).amount).toBeLessThanOrEqual(amount + 1e-9);
      expect(audibleSlide({ ...setting, room: setting.room + more }).amount).toBeLessThanOrEqual(amount + 1e-9);
      expect(audibleSlide({ ...setting, cover: setting.cover + more }).amount).toBeLessThanOrEqual(amount + 1e-9);
    }));
  });
});
