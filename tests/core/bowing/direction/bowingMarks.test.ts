import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { bowingMarks } from '../../../../core/bowing/direction/bowingMarks.ts';
import type { Direction } from '../../../../core/bowing/strokes.ts';
import type { Part } from '../../../../core/music/part.ts';
import { bowsIn } from '../bowing.ts';
import { bowings, inTime } from './bowed.ts';

const token = fc.tuple(fc.constantFrom('D5', 'E5', 'D5', 'r', '[G3 D4 B4]'), fc.constantFrom('1/2', '1', '3/2', '3'), fc.constantFrom('', "'", '<up>', '<down>'));

/** Directions as a player reads them: signs, and in turn between them. */
function read(part: Part, marks: ReturnType<typeof bowingMarks>): Map<string, Direction> {
  const { strokes } = bowsIn(part, marks.map(({ note, value }) => [note, value]));
  const ways = new Map<string, Direction>();
  let way: Direction = 'up';
  for (const stroke of strokes) {
    way = stroke.direction ?? (way === 'down' ? 'up' : 'down');
    for (const { event } of stroke.pieces) ways.set(event.head.id, way);
  }
  return ways;
}

describe('a bowing as marks', () => {
  it('read by a player who changes direction in turn between the signs, gives back every direction of the bowing', () => {
    fc.assert(fc.property(fc.array(token, { minLength: 1, maxLength: 7 }), fc.integer({ min: 0, max: 4 }), (music, which) => {
      const part = inTime('4/4', `${music.map(([pitch, length, tail]) => `${pitch}:${length}${pitch === 'r' ? '' : tail}`).join(' ')} D5:1( E5:1)`);
      const all = bowings(part, [], 5);
      const bowing = all[which % all.length]!;
      const ways = read(part, bowingMarks(bowing, new Map(part.measures.map((measure) => [measure.ordinal, measure]))));
      for (const { facts, direction } of bowing.strokes) expect(ways.get(facts.stroke.pieces[0]!.event.head.id)).toBe(direction);
    }), { numRuns: 300 });
  });

  it('says nothing that follows by itself: four quarters in turn need the first sign only', () => {
    const part = inTime('4/4', 'D5:1 E5:1 F5:1 G5:1');
    expect(bowingMarks(bowings(part)[0]!, new Map(part.measures.map((measure) => [measure.ordinal, measure])))).toEqual([{ note: 'm1n0', value: { kind: 'bow', bow: 'down' } }]);
  });
});
