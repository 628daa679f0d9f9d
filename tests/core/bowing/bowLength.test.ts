import { describe, expect, it } from 'vitest';
import { BOW_LIMIT, bowDynamic, bowUsed, DYNAMICS, secondsPerBow } from '../../../core/bowing/bowLength.ts';
import { instrumentNamed } from '../../../core/instruments/instrumentNamed.ts';
import { bowsIn } from './bowing.ts';

const violin = instrumentNamed('violin');

describe('how long a bow lasts', () => {
  it('agrees with the published value at pp, and is never shorter than the published ones (R. Hoffmann, Bow length: pp 12 s, mf 3, f 1, ff 0.5)', () => {
    expect(BOW_LIMIT.pp).toBe(12);
    for (const [dynamic, published] of [['mf', 3], ['f', 1], ['ff', 0.5]] as const) expect(BOW_LIMIT[dynamic]).toBeGreaterThanOrEqual(published);
  });

  it('never grows with loudness, on any instrument', () => {
    for (const name of ['violin', 'viola', 'cello', 'double-bass'] as const) {
      const seconds = DYNAMICS.map((dynamic) => secondsPerBow(instrumentNamed(name), dynamic, BOW_LIMIT));
      expect(seconds).toEqual([...seconds].sort((a, b) => b - a));
    }
  });

  it('is shorter on larger instruments (R. Hoffmann)', () => {
    const seconds = (['violin', 'viola', 'cello', 'double-bass'] as const).map((name) => secondsPerBow(instrumentNamed(name), 'p', BOW_LIMIT));
    expect(seconds.map((value) => Math.round(value * 100) / 100)).toEqual([9, 8.55, 7.65, 6.75]);
  });

  it('keeps the bow at speeds a player can draw: 4 cm/s to 1 m/s (Askenfelt, from memory)', () => {
    for (const dynamic of DYNAMICS) {
      const speed = violin.bowHair / BOW_LIMIT[dynamic];
      expect(speed).toBeGreaterThan(40);
      expect(speed).toBeLessThan(1000);
    }
  });

  it.each([
    ['ppp', 'pp'], ['pppp', 'pp'], ['fff', 'ff'], ['sf', 'f'], ['sfz', 'f'], ['sffz', 'f'], ['fz', 'f'], ['rfz', 'f'], ['fp', 'p'], ['sfp', 'p'], ['sfpp', 'pp'], ['mp', 'mp'], ['n', 'mf'], [null, 'mf'],
  ] as const)('%s counts as %s', (printed, expected) => {
    expect(bowDynamic(printed, 'mf')).toBe(expected);
  });
});

describe('how much bow a stroke uses', () => {
  const used = (music: string) => bowUsed(bowsIn(music).strokes[0]!, violin, BOW_LIMIT, 'mf');
  it('is its seconds over the seconds of a bow', () => {
    expect(used('{p} {q=60} D5:6')).toBeCloseTo(6 / 9);
  });

  it('adds up over a slur whose dynamic changes', () => {
    expect(used('{p} {q=60} D5:3( {f} E5:2)')).toBeCloseTo(3 / 9 + 2 / 4);
  });

  it('doubles at half the tempo', () => {
    expect(used('{p} {q=30} D5:3( E5:3)')).toBeCloseTo(2 * used('{p} {q=60} D5:3( E5:3)'));
  });

  it('is nothing for a tremolo', () => {
    expect(used('{ff} {q=60} D5:20*')).toBe(0);
  });
});
