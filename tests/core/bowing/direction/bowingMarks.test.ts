import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { bowingMarks } from '../../../../core/bowing/direction/bowingMarks.ts';
import type { Direction } from '../../../../core/bowing/strokes.ts';
import { checkPart } from '../../../../core/check/checkPart.ts';
import type { Mark } from '../../../../core/music/mark.ts';
import type { Part } from '../../../../core/music/part.ts';
import { seatsFor } from '../../../../core/music/seat.ts';
import { bowsIn } from '../bowing.ts';
import { bowings, inTime } from './bowed.ts';

const byOrdinal = (part: Part) => new Map(part.measures.map((measure) => [measure.ordinal, measure]));

/** Short rests and thirds of a beat, at tempos from slow to very fast. */
const shortToken = fc.tuple(fc.constantFrom('D5', 'E5', '^F5', 'r'), fc.constantFrom('1/6', '1/4', '1/3', '1', '2'), fc.constantFrom('', '', '<up>', '<down>'));
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
      const ways = read(part, bowingMarks(bowing, byOrdinal(part)));
      for (const { facts, direction } of bowing.strokes) expect(ways.get(facts.stroke.pieces[0]!.event.head.id)).toBe(direction);
    }), { numRuns: 300 });
  });

  it('is all that is asked of it: with its signs on the page, and the direction of every bow besides, no bow is said to go the same way twice', () => {
    fc.assert(fc.property(fc.array(shortToken, { minLength: 2, maxLength: 12 }), fc.constantFrom(30, 72, 150, 288), (music, tempo) => {
      const part = inTime('4/4', `{q=${tempo}} ${music.map(([pitch, length, tail]) => `${pitch}:${length}${pitch === 'r' || pitch.startsWith('^') ? '' : tail}`).join(' ')} D5:1`);
      const bowing = bowings(part)[0]!;
      const marks = bowingMarks(bowing, byOrdinal(part));
      const besides = bowing.strokes.map(({ facts, direction }): Mark => ({ note: facts.stroke.pieces.find(({ event }) => !event.head.grace)!.event.head.id, value: { kind: 'bow', bow: direction } }));
      const hooked = new Set(marks.filter(({ value }) => value.kind === 'hooked').map(({ note }) => note));
      const found = checkPart({ part: { ...part, instrument: 'violin' }, seats: seatsFor(2), marks: [...marks, ...besides.filter(({ note }) => !hooked.has(note))], settings: {} });
      expect(found.filter(({ rule }) => rule === 'bow/same-direction').map(({ text }) => text)).toEqual([]);
    }), { numRuns: 300 });
  });

  it('a bow brought back over a rest of a sixteenth is said at a fast tempo, where a hand hardly lifts, and not at a slow one', () => {
    const back = (tempo: number) => {
      const part = inTime('4/4', `{q=${tempo}} D5:3/4<down> r:1/4 F5:1<down> G5:2`);
      return bowingMarks(bowings(part)[0]!, byOrdinal(part)).map(({ note, value }) => [note, value.kind]);
    };
    expect([back(40), back(144)]).toEqual([[], [['m1n1', 'retake']]]);
  });

  it('says nothing that follows by itself: four quarters in turn need the first sign only', () => {
    const part = inTime('4/4', 'D5:1 E5:1 F5:1 G5:1');
    expect(bowingMarks(bowings(part)[0]!, byOrdinal(part))).toEqual([{ note: 'm1n0', value: { kind: 'bow', bow: 'down' } }]);
  });
});
