import { describe, expect, it } from 'vitest';
import { bowEvents } from '../../../core/bowing/events.ts';
import { strokesOf } from '../../../core/bowing/strokes.ts';
import { knownDirections } from '../../../core/check/knownDirections.ts';
import { seatMarks } from '../../../core/check/seatMarks.ts';
import { tempoMap } from '../../../core/music/seconds.ts';
import { partOf } from '../../support/partBuilder.ts';
import { marksOf, type ShortMark } from './ruleTable.ts';

const down = { kind: 'bow', bow: 'down' } as const;

/** Directions as letters: capital where the sign stands on the bow, a dot where nothing tells. */
function told(music: string, marks: ShortMark[], atMost = 6): string {
  const part = partOf(`{q=60} ${music}`);
  const strokes = strokesOf(bowEvents(part, tempoMap(part, 90))[0]!, seatMarks(part, marksOf(marks), []).forAll);
  return knownDirections(strokes, 0.15, atMost)
    .map((known) => (known ? (known.counted ? known.direction[0]! : known.direction[0]!.toUpperCase()) : '.'))
    .join('');
}

describe('directions known from signs', () => {
  it.each<[claim: string, music: string, marks: ShortMark[], atMost: number, told: string]>([
    ['turn and turn about from a sign', 'D5:1 E5:1 F5:1 G5:1', [['m1n1', down]], 6, '.Dud'],
    ['no further than is counted', 'D5:1 E5:1 F5:1 G5:1', [['m1n0', down]], 2, 'Dud.'],
    ['one bow for a slur', 'D5:1 E5:1( F5:1) G5:1', [['m1n0', down]], 6, 'Dud'],
    ['nothing after a rest', 'D5:1 r:1 F5:1', [['m1n0', down]], 6, 'D.'],
    ['nothing after a retake without a sign', 'D5:1 E5:1 F5:1', [['m1n0', down], ['m1n1', { kind: 'retake' }]], 6, 'D..'],
    ['nothing in a tremolo or after it', 'D5:1 E5:1* F5:1', [['m1n0', down]], 6, 'D..'],
    ['a new sign over the count', 'D5:1 E5:1 F5:1 G5:1', [['m1n0', down], ['m1n1', down]], 6, 'DDud'],
  ])('give %s', (_, music, marks, atMost, directions) => {
    expect(told(music, marks, atMost)).toBe(directions);
  });

  it('are printed ones as long as they come from a printed sign', () => {
    const part = partOf('{q=60} D5:1<down> E5:1 F5:1');
    const strokes = strokesOf(bowEvents(part, tempoMap(part, 90))[0]!, seatMarks(part, marksOf([['m1n2', down]]), []).forAll);
    expect(knownDirections(strokes, 0.15, 6).map((known) => known?.printed)).toEqual([true, true, false]);
  });
});
