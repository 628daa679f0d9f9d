import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { directionLattice } from '../../../../core/bowing/direction/directionLattice.ts';
import { bowingMarks } from '../../../../core/bowing/direction/bowingMarks.ts';
import { reasonOf } from '../../../../core/bowing/direction/inferDirections.ts';
import { BOW_WEIGHTS } from '../../../../core/bowing/direction/weights.ts';
import { everyPath } from '../../search/everyPath.ts';
import { asSigns, bestIn, bowings, factsIn, inTime } from './bowed.ts';

describe('which way the bow goes', () => {
  it.each([
    ['a measure begins down and goes on in turn', '4/4', 'D5:1 E5:1 F5:1 G5:1', 'd u d u'],
    ['a pick-up goes up (K. Gehrkens, Essentials in Conducting)', '4/4', 'D5:1 | E5:1 F5:1 G5:1 A5:1 | G5:4', 'u d u d u d'],
    ['two pick-up notes go down and up', '4/4', 'D5:1/2 E5:1/2 | F5:1 G5:1 A5:1 G5:1 | F5:4', 'd u d u d u d'],
    ['slurs between which an even number of separate notes lies go opposite ways (Broadley, Chats to Cello Students)', '4/4', 'D5:1( E5:1) F5:1 G5:1 | A5:1( B5:1) C6:2', 'd u d u d'],
    ['slurs between which an odd number lies go the same way (Broadley, Chats to Cello Students)', '3/4', 'D5:1( E5:1) F5:1 | A5:1( B5:1) C6:1 | D6:3', 'd u d u d'],
    ['chords of three go down, and down again', '4/4', '[G3 D4 B4]:2 [G3 D4 B4]:2 | [G3 D4 B4]:4', 'd u d'],
  ])('%s', (_, time, music, expected) => {
    expect(bestIn(inTime(time, music))).toBe(expected);
  });

  it('a slur that would outlast its bow is split, on the strongest place', () => {
    const part = inTime('4/4', '{ff} {q=60} D5:4( | E5:4 | F5:4 | G5:4)');
    const [bowing] = bowings(part);
    expect(asSigns(bowing!)).toBe('d+');
    const splits = bowingMarks(bowing!, new Map(part.measures.map((measure) => [measure.ordinal, measure]))).filter(({ value }) => value.kind === 'slur');
    expect(splits).toEqual([{ note: 'm3n0', value: { kind: 'slur', slur: 'split' } }]);
  });

  it('the same slur at pp and twice the tempo is not', () => {
    expect(bestIn(inTime('4/4', '{pp} {q=120} D5:4( | E5:4 | F5:4 | G5:4)'))).toBe('d');
  });

  it('a marked direction is kept, however dear', () => {
    fc.assert(fc.property(fc.array(fc.constantFrom('up', 'down', null), { minLength: 4, maxLength: 4 }), (signs) => {
      const marks = signs.flatMap((sign, i) => (sign === null ? [] : [[`m1n${i}`, { kind: 'bow', bow: sign }] as [string, { kind: 'bow'; bow: 'up' | 'down' }]]));
      const { strokes } = bowings(inTime('4/4', 'D5:1 E5:1 F5:1 G5:1'), marks)[0]!;
      signs.forEach((sign, i) => { if (sign !== null) expect(strokes[i]!.direction).toBe(sign); });
    }));
  });

  it('two down-bows in a row are proposed with a retake, an uneven pair with a hook', () => {
    const measures = (part: ReturnType<typeof inTime>) => new Map(part.measures.map((measure) => [measure.ordinal, measure]));
    const even = inTime('4/4', 'D5:1 E5:1 F5:1 G5:1');
    const downs = bowings(even, [['m1n0', { kind: 'bow', bow: 'down' }], ['m1n1', { kind: 'bow', bow: 'down' }]])[0]!;
    expect(bowingMarks(downs, measures(even))).toContainEqual({ note: 'm1n1', value: { kind: 'retake' } });
    const dotted = inTime('4/4', 'D5:3/2 E5:1/2 F5:3/2 G5:1/2');
    const pair = bowings(dotted, [['m1n0', { kind: 'bow', bow: 'down' }], ['m1n1', { kind: 'bow', bow: 'down' }]])[0]!;
    expect(bowingMarks(pair, measures(dotted))).toContainEqual({ note: 'm1n1', value: { kind: 'hooked' } });
  });

  it('a retake that is marked is followed', () => {
    expect(bestIn(inTime('4/4', 'D5:1 E5:1 F5:1 G5:1'), [['m1n2', { kind: 'retake' }]])).toMatch(/^. (.) \1/);
  });
});

const tokens = fc.array(fc.tuple(fc.constantFrom('D5', 'E5', 'r', '[G3 D4 B4]'), fc.constantFrom('1/2', '1', '2'), fc.constantFrom('', '', "'")), { minLength: 1, maxLength: 6 });

describe('the search', () => {
  it('finds the cheapest bowings, as trying all of them does, and its terms add up', () => {
    fc.assert(fc.property(tokens, fc.integer({ min: 1, max: 5 }), fc.boolean(), (music, count, slurred) => {
      const notes = music.map(([pitch, length, tail]) => `${pitch}:${length}${pitch === 'r' ? '' : tail}`);
      const part = inTime('4/4', `${notes.join(' ')} D5:1${slurred ? '(' : ''} E5:1${slurred ? ')' : ''}`);
      const facts = factsIn(part);
      const all = everyPath(directionLattice(facts, BOW_WEIGHTS));
      const found = bowings(part, [], count);
      expect(found).toHaveLength(Math.min(count, all.length));
      found.forEach((bowing, i) => {
        expect(bowing.cost).toBeCloseTo(all[i]!.cost, 9);
        expect(Object.values(bowing.terms).reduce((sum, value) => sum + value, 0)).toBeCloseTo(bowing.cost, 9);
      });
    }), { numRuns: 100 });
  });

  it('no two alternatives are the same, and every bow has a reason', () => {
    const found = bowings(inTime('3/4', 'D5:1 | E5:1( F5:1) G5:1 | A5:3'), [], 5);
    expect(new Set(found.map(asSigns)).size).toBe(5);
    for (const { strokes } of found) for (const stroke of strokes) expect(reasonOf(stroke)).toMatch(/^[A-Z].*\.$/);
  });
});
