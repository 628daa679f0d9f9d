import { describe, expect, it } from 'vitest';
import { throughBody } from '../../../core/sounding/samples/body.ts';
import { stringTables } from '../../../core/sounding/samples/stringTable.ts';

const RATE = 44_100;

/** Strength of one frequency, by correlation with its sine and cosine over whole periods. */
function strength(samples: ArrayLike<number>, hertz: number, rate: number): number {
  let [re, im] = [0, 0];
  for (let i = 0; i < samples.length; i += 1) {
    re += samples[i]! * Math.cos((2 * Math.PI * hertz * i) / rate);
    im += samples[i]! * Math.sin((2 * Math.PI * hertz * i) / rate);
  }
  return (2 * Math.hypot(re, im)) / samples.length;
}

const gain = (hertz: number, instrument: 'violin' | 'cello'): number => {
  const tone = Float32Array.from({ length: RATE }, (_, i) => Math.sin((2 * Math.PI * hertz * i) / RATE));
  throughBody(tone, instrument, RATE);
  return 20 * Math.log10(strength(tone.slice(RATE / 2), hertz, RATE));
};

describe('the body of an instrument', () => {
  it('of a violin lifts its air at 275 Hz and the hill of its bridge at 2500, not what lies between or above', () => {
    expect(gain(275, 'violin')).toBeGreaterThan(4);
    expect(gain(2500, 'violin')).toBeGreaterThan(3);
    expect(gain(1300, 'violin')).toBeLessThan(0);
    expect(gain(12_000, 'violin')).toBeLessThan(-12);
  });

  it('of a cello lifts lower ones', () => {
    expect(gain(100, 'cello')).toBeGreaterThan(gain(100, 'violin') + 4);
  });
});

describe('one period of a bowed string', () => {
  it('has harmonics that fall as one over their number, none of which passes the limit', () => {
    const table = stringTables(20_000)(440).slice(0, 1024);
    const harmonics = Array.from({ length: 64 }, (_, h) => strength(table, h + 1, 1024));
    for (const h of [2, 3, 10, 32]) expect(harmonics[h - 1]! / harmonics[0]!).toBeCloseTo(1 / h, 3);
    expect(Math.max(...harmonics.slice(Math.floor(20_000 / 440)))).toBeLessThan(1e-6);
  });
});
