import { describe, expect, it } from 'vitest';
import { handPath } from '../../../../core/fingering/explain/handPath.ts';
import { fingerLine } from '../../../../core/fingering/fingerLine.ts';
import type { Pin } from '../../../../core/fingering/pin.ts';
import { instrumentNamed } from '../../../../core/instruments/instrumentNamed.ts';
import { eighths } from '../lines.ts';

function pathOf(name: 'violin' | 'cello', midi: number[], pins: Pin[]) {
  const instrument = instrumentNamed(name);
  const line = eighths(midi, name);
  const { fingerings } = fingerLine(instrument, line, 90, { best: 1, pins: new Map(line.map(({ id }, i) => [id, pins[i]!])) });
  return handPath({ instrument, line }, fingerings[0]!);
}

describe('the hand over time', () => {
  // Equal temperament on an ideal string of 328 mm: x(n) = L (1 - 2^(-n/12)).
  it('stops the string where the pitch lies, with the frame around it', () => {
    const [first, second] = pathOf('violin', [71, 74], [{ string: 2, finger: 1, position: 1 }, { string: 2, finger: 3, position: 1 }]);
    expect(first!.stopped).toBeCloseTo(328 * (1 - 2 ** (-2 / 12)), 6);
    expect(second!.stopped).toBeCloseTo(328 * (1 - 2 ** (-5 / 12)), 6);
    expect([second!.low, second!.high]).toEqual([first!.low, first!.high]);
    expect(first!.low).toBeLessThan(first!.stopped! + 10);
    expect(first!.high).toBeGreaterThan(second!.stopped!);
  });

  it('climbs with a shift, and narrows as it climbs', () => {
    const [low, high] = pathOf('violin', [71, 74], [{ string: 2, finger: 1, position: 1 }, { string: 2, finger: 1, position: 3 }]);
    expect(high!.low).toBeGreaterThan(low!.low);
    expect(high!.high - high!.low).toBeLessThan(low!.high - low!.low);
  });

  it('stays where it was over an open string', () => {
    const [stopped, open] = pathOf('violin', [74, 76], [{ string: 2, finger: 3, position: 1 }, { string: 1, finger: 0 }]);
    expect(open).toMatchObject({ stopped: null, low: stopped!.low, high: stopped!.high });
  });

  it('is the closed hand of a minor third on the cello', () => {
    const [first] = pathOf('cello', [59, 60], [{ string: 1, finger: 1, position: 1 }, { string: 1, finger: 2, position: 1 }]);
    expect(first!.low).toBeCloseTo(690 * (1 - 2 ** (-2 / 12)), 6);
    expect(first!.high).toBeCloseTo(690 * (1 - 2 ** (-5 / 12)), 6);
  });
});
