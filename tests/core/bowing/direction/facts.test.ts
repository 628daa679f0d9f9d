import { describe, expect, it } from 'vitest';
import { metricLevel } from '../../../../core/music/metre.ts';
import { swellOver, swellsOf } from '../../../../core/bowing/direction/swells.ts';
import { factsIn, inTime } from './bowed.ts';

const levels = (time: string, measure: string, places: number[], implicit = false): number[] => {
  const [first] = inTime(time, measure).measures;
  return places.map((at) => metricLevel({ ...first!, ...(implicit ? { implicit: true as const } : {}) }, at));
};

describe('how strong a place of the measure is', () => {
  it.each([
    ['4/4', 'D5:4', [0, 1, 2, 3, 0.5, 0.25], [0, 2, 1, 2, 3, 4]],
    ['3/4', 'D5:3', [0, 1, 2, 1.5], [0, 2, 2, 3]],
    ['2/4', 'D5:2', [0, 1, 0.5], [0, 1, 3]],
    ['6/8', 'D5:3', [0, 1.5, 0.5, 1, 0.25], [0, 1, 3, 3, 4]],
    ['9/8', 'D5:9/2', [0, 1.5, 3, 0.5], [0, 2, 2, 3]],
    ['3/8', 'D5:3/2', [0, 0.5, 1], [0, 2, 2]],
  ])('%s', (time, measure, places, expected) => {
    expect(levels(time, measure, places)).toEqual(expected);
  });

  it('a pick-up counts from the barline it leads to', () => {
    expect(levels('4/4', 'D5:1', [0], true)).toEqual([2]);
    expect(levels('4/4', 'D5:1/2', [0], true)).toEqual([3]);
  });
});

describe('hairpins', () => {
  const part = inTime('4/4', 'D5:1 E5:1 F5:1 G5:1 | A5:4');
  part.measures[0]!.wedges = [{ type: 'crescendo', at: 0 }, { type: 'stop', at: 3 }];
  part.measures[1]!.wedges = [{ type: 'diminuendo', at: 0 }];

  it('reach from their beginning to their stop, or to the end of the measure', () => {
    expect(swellsOf(part)).toEqual([{ from: 0, to: 3, sign: 1 }, { from: 4, to: 8, sign: -1 }]);
  });

  it('count for a bow when they cover more than half of it', () => {
    const swells = swellsOf(part);
    expect([swellOver(swells, 0, 4), swellOver(swells, 2, 4), swellOver(swells, 3, 4), swellOver(swells, 4, 8)]).toEqual([1, 0, 0, -1]);
  });

  it('turn a bow: the same notes go up under a crescendo and down under a diminuendo', () => {
    expect(factsIn(part).map(({ swell }) => swell)).toEqual([1, 1, 1, 0, -1]);
  });
});

describe('what a bow shows of itself', () => {
  it('its length, its rest before and after, and whether it outweighs its neighbours', () => {
    const facts = factsIn(inTime('4/4', 'D5:1/2 E5:2 F5:1/2 r:1 | G5:4'));
    expect(facts.map(({ quarters, restBefore, restAfter, outweighs }) => [quarters, restBefore, restAfter, outweighs])).toEqual([
      [0.5, Infinity, 0, false],
      [2, 0, 0, true],
      [0.5, 0, 1, false],
      [4, 1, Infinity, false],
    ]);
  });

  it('notes of thirds of a beat that touch have no rest between them, though their lengths do not add up to the last digit', () => {
    const music = Array.from({ length: 30 }, (_, i) => (i % 4 === 3 ? 'D5:1 E5:2' : 'D5:1/3 E5:1/6 F5:1/6 G5:1/3 A5:2/3 B5:1/3 C6:1')).join(' | ');
    const facts = factsIn(inTime('3/4', music));
    expect(facts.slice(1).filter(({ restBefore }) => restBefore !== 0)).toEqual([]);
    expect(facts.slice(0, -1).filter(({ restAfter }) => restAfter !== 0)).toEqual([]);
  });

  it('a tremolo has no direction and leaves the bow after it free', () => {
    const facts = factsIn(inTime('4/4', 'D5:2 E5:2* | F5:4'));
    expect(facts.map(({ restBefore }) => restBefore)).toEqual([Infinity, Infinity]);
  });
});
