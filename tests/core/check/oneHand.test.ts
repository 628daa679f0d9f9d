import { describe, expect, it } from 'vitest';
import { hindrance } from '../../../core/check/oneHand.ts';
import { instrumentNamed } from '../../../core/instruments/instrumentNamed.ts';
import { eighths } from '../fingering/lines.ts';
import { fingerLine } from '../../../core/fingering/fingerLine.ts';
import type { StringNumber } from '../../../core/instruments/instrument.ts';

describe('what one hand can hold', () => {
  it.each(['violin', 'viola', 'cello'] as const)('every double stop that the engine fingers on the %s, and each in either order', (name) => {
    const instrument = instrumentNamed(name);
    const lowest = instrument.openStrings[3];
    let held = 0;
    for (let low = lowest; low <= lowest + 24; low += 1) {
      for (const interval of [3, 4, 5, 7, 8, 9, 12]) {
        const { fingerings } = fingerLine(instrument, eighths([[low, low + interval]], name), 60, { best: 3 });
        for (const { notes } of fingerings) {
          if (notes.length < 2 || notes.some(({ finger }) => finger === 'thumb')) continue;
          const [a, b] = notes.map(({ string, finger }, i) => ({ midi: low + i * interval, finger, string: string as StringNumber }));
          expect([hindrance(instrument, a!, b!), hindrance(instrument, b!, a!)], `${low} ${interval} ${JSON.stringify([a, b])}`).toEqual([null, null]);
          held += 1;
        }
      }
    }
    expect(held).toBeGreaterThan(100);
  });

  it('is easier the less is marked: a mark taken away never brings a hindrance', () => {
    const violin = instrumentNamed('violin');
    const fingers = [undefined, 1, 2, 3, 4] as const;
    const strings = [undefined, 1, 2, 3, 4] as const;
    for (const [low, high] of [[70, 79], [62, 71], [57, 60], [74, 83]] as const) {
      for (const f of fingers) for (const g of fingers) for (const s of strings) for (const t of strings) {
        const one = { midi: low, ...(f === undefined ? {} : { finger: f }), ...(s === undefined ? {} : { string: s }) };
        const other = { midi: high, ...(g === undefined ? {} : { finger: g }), ...(t === undefined ? {} : { string: t }) };
        if (hindrance(violin, one, other) !== null) continue;
        expect(hindrance(violin, { midi: low, ...(s === undefined ? {} : { string: s }) }, other)).toBeNull();
      }
    }
  });
});
