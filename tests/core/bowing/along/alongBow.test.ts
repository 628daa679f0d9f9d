import { describe, expect, it } from 'vitest';
import { alongBow, type AlongBow } from '../../../../core/bowing/along/alongBow.ts';
import { instrumentNamed } from '../../../../core/instruments/instrumentNamed.ts';
import type { InstrumentName } from '../../../../core/music/part.ts';
import type { ShortMark } from '../../check/ruleTable.ts';
import { bowings, inTime } from '../direction/bowed.ts';

const along = (time: string, music: string, marks: ShortMark[] = [], instrument: InstrumentName = 'violin'): AlongBow => alongBow(bowings(inTime(time, music), marks)[0]!.strokes, instrumentNamed(instrument));
const DOWN: ShortMark = ['m1n0', { kind: 'bow', bow: 'down' }];
const lengths = ({ strokes }: AlongBow): number[] => strokes.map(({ from, to }) => Math.abs(to - from));

describe('the bow along its hair', () => {
  it('a down-bow leaves the frog, an up-bow comes back to it', () => {
    const { strokes, short } = along('4/4', '{mf} {q=60} D5:2 E5:2', [DOWN]);
    expect(strokes[0]!.to).toBeGreaterThan(strokes[0]!.from);
    expect(strokes[1]!.from).toBe(strokes[0]!.to);
    expect(strokes[1]!.to).toBeLessThan(strokes[1]!.from);
    expect(short).toEqual([]);
  });

  it('an odd number of short notes before a long one: the last short note takes more bow, so that the long one starts where it needs to (Davidoff, Violoncell-Schule, I.vii)', () => {
    const result = along('4/4', '{f} {q=60} D5:3 E5:1/4 | F5:3 G5:1/4 | A5:3', [DOWN]);
    const [long, short] = lengths(result);
    expect(result.strokes[1]!.pace).toBe('faster');
    expect(short! / 0.25).toBeGreaterThan(long! / 3);
    expect(result.short.some(({ kind, fix }) => kind === 'wrong-end' && fix.some(({ pace }) => pace === 'faster'))).toBe(true);
  });

  it('a slurred group takes the bow of one long note (Davidoff, Violoncell-Schule, I.x)', () => {
    expect(lengths(along('4/4', '{mf} {q=60} D5:1( E5:1) F5:2', [DOWN]))).toEqual(lengths(along('4/4', '{mf} {q=60} D5:2 F5:2', [DOWN])));
  });

  it('a note longer than the hair runs out whatever is done; softer or faster it does not', () => {
    expect(along('4/4', '{f} {q=60} D5:5', [DOWN]).short).toMatchObject([{ stroke: 0, kind: 'runs-out', fix: [] }]);
    expect(along('4/4', '{p} {q=60} D5:5', [DOWN]).short).toEqual([]);
    expect(along('4/4', '{f} {q=120} D5:5', [DOWN]).short).toEqual([]);
  });

  it('a rest lets the bow be placed anew', () => {
    expect(along('4/4', '{f} {q=60} D5:3 r:1 | F5:3', [DOWN]).short).toEqual([]);
  });

  it('no bow leaves the hair of its instrument', () => {
    for (const name of ['violin', 'viola', 'cello', 'double-bass'] as const) {
      const { strokes } = along('4/4', '{ff} {q=50} D5:2 E5:1 F5:1/2 | G5:3 A5:1/4', [DOWN], name);
      for (const { from, to } of strokes) {
        expect(Math.min(from, to)).toBeGreaterThanOrEqual(0);
        expect(Math.max(from, to)).toBeLessThanOrEqual(instrumentNamed(name).bowHair);
      }
    }
  });
});
