import { describe, expect, it } from 'vitest';
import { travel } from '../../../core/matching/travel.ts';
import { seatsFor } from '../../../core/music/seat.ts';
import { partOf } from '../../support/partBuilder.ts';
import { marksOf, type ShortMark } from '../check/ruleTable.ts';

const seats = seatsFor(4);
const up = { kind: 'bow', bow: 'up' } as const;
const LINE = 'D5:1 E5:1 F5:1 G5:1 | A5:1 C5:1 B4:1 D5:1 | E5:2 C5:2';
const OCTAVE = 'D4:1 E4:1 F4:1 G4:1 | A4:1 C4:1 B3:1 D4:1 | E4:2 C4:2';

function travelled(from: string, marks: ShortMark[], to: string, standing: ShortMark[] = []) {
  return travel({ part: partOf(from), marks: marksOf(marks), seats }, { part: partOf(to), marks: marksOf(standing), seats }).map(({ likeness, from: first, to: last, marks: made }) => [likeness, first, last, made.map(({ note }) => note).sort()]);
}

describe('bows that travel to other sections', () => {
  it('go to the passage that plays the same at the same time', () => {
    expect(travelled(LINE, [['m1n1', up], ['m2n3', up]], OCTAVE)).toEqual([['unison', 1, 3, ['m1n1', 'm2n3']]]);
  });

  it('go to no passage that is bowed so already, and to none that plays something else', () => {
    expect(travelled(LINE, [['m1n1', up]], OCTAVE, [['m1n1', up]])).toEqual([]);
    expect(travelled(LINE, [['m1n1', up]], 'C4:4 | C4:4 | C4:4')).toEqual([]);
  });

  it('go to the same music at another time too, and no mark is laid twice', () => {
    const longer = `${LINE} | ${LINE}`;
    const later = `r:4 | r:4 | r:4 | r:4 | ${OCTAVE} | ${OCTAVE}`;
    const found = travelled(longer, [['m1n1', up]], later);
    expect(found.length).toBeGreaterThan(0);
    expect(found.every(([, first]) => (first as number) >= 5)).toBe(true);
    const notes = found.flatMap(([, , , made]) => made as string[]);
    expect(new Set(notes).size).toBe(notes.length);
  });
});
