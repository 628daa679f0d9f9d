import { describe, expect, it } from 'vitest';
import { renderSounding } from '../../../core/sounding/render.ts';
import type { DrawnBow } from '../../../core/sounding/sound.ts';
import { partOf } from '../../support/partBuilder.ts';
import { dipNear, loudness } from './loudness.ts';
import { heardFrom } from './passage.ts';

const RATE = 22_050;
const SEATS = 12;
const held = partOf('{mf} {q=60} A4:8');
const pins = { m1n0: { string: 2, finger: 0 } } as const;
/** Bows of a held note that turns at each of these seconds. */
const bows = (...turns: number[]): DrawnBow[] => [0, ...turns].map((begins, i, all) => ({ begins, ends: all[i + 1] ?? 8, direction: i % 2 ? 'up' : 'down' }));
const levels = (players: DrawnBow[][]) => loudness(renderSounding(heardFrom(held, pins, { players: players.map((own, i) => ({ seat: String(i), bows: own })) }), 'violin', RATE), RATE);
/** A quarter of a second of beats between twelve strings is no dip of the bow: the fall is read against a section that never changes. */
const fall = (players: DrawnBow[][], at: number) => {
  const still = levels(players.map(() => bows()));
  const turned = levels(players);
  return Math.max(...turned.flatMap(({ decibels, at: moment }, i) => (Math.abs(moment - at) < 0.1 ? [still[i]!.decibels - decibels] : [])));
};

describe('a change of bow as it sounds', () => {
  it('is a dip of 5 to 7.5 dB on a held open string at its moment, measured in 12 ms windows, and none elsewhere', () => {
    const solo = levels([bows(4)]);
    // The line begins 0.1 s into the sound.
    expect(dipNear(solo, 4.1)).toBeGreaterThan(5);
    expect(dipNear(solo, 4.1)).toBeLessThan(7.5);
    for (const at of [1, 2, 3, 5, 6, 7]) expect(dipNear(solo, at), String(at)).toBeLessThan(0.5);
  });

  it('is shorter than a tenth of a second', () => {
    const deep = levels([bows(4)]).filter(({ at, decibels }, _, all) => Math.abs(at - 4.1) < 0.3 && decibels < all.find((one) => one.at > 3)!.decibels - 1);
    expect(deep.at(-1)!.at - deep[0]!.at).toBeLessThan(0.1);
  });

  it('leaves a hole in the line when all twelve change at once, and hardly any when they share the changes out', () => {
    const together = fall(Array.from({ length: SEATS }, () => bows(4)), 4.1);
    const apart = Array.from({ length: SEATS }, (_, i) => bows(2 + 0.4 * i));
    expect(together).toBeGreaterThan(2);
    for (const i of [3, 5, 8]) expect(fall(apart, 2.1 + 0.4 * i), `seat ${i}`).toBeLessThan(together / 2);
  });
});

describe('loudness', () => {
  it('rises by 12 dB from p to ff', () => {
    const both = loudness(renderSounding(heardFrom(partOf('{q=60} {p} A4:2 {ff} A4:2'), { m1n0: { string: 2, finger: 0 }, m1n1: { string: 2, finger: 0 } }), 'violin', RATE), RATE, 0.5);
    const at = (second: number) => both.find((one) => one.at > second)!.decibels;
    expect(at(3) - at(1)).toBeCloseTo(12, 0);
  });

  it('of a section is about that of one player, whatever its number', () => {
    const mean = (players: number) => {
      const all = loudness(renderSounding(heardFrom(held, pins, { players: Array.from({ length: players }, (_, i) => ({ seat: String(i), bows: bows() })) }), 'violin', RATE), RATE, 6);
      return all[0]!.decibels;
    };
    for (const players of [4, 16]) expect(Math.abs(mean(players) - mean(1)), String(players)).toBeLessThan(3);
  });
});
