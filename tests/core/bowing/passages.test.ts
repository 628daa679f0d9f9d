import { describe, expect, it } from 'vitest';
import { checkContext } from '../../../core/check/context.ts';
import { CheckSettings } from '../../../core/check/settings.ts';
import type { StringPart } from '../../../core/music/part.ts';
import { seatsFor } from '../../../core/music/seat.ts';
import { partOf } from '../../support/partBuilder.ts';
import { marksOf, type ShortMark } from '../check/ruleTable.ts';

const change = (after: number | string) => ({ kind: 'change', after }) as const;

/** Each passage as "first-last event: measure@at seats, ...". */
function passages(music: string, marks: ShortMark[], players = 4): string[] {
  const part = partOf(music) as StringPart;
  const { staggered } = checkContext(part, seatsFor(players), marksOf(marks), CheckSettings.parse({}));
  return staggered.map(({ from, to, changes }) => `${from}-${to}: ${changes.map(({ instant, seats }) => `${instant.measure}@${instant.at} ${seats.join(' ')}`).join(', ')}`);
}

describe('a staggered passage', () => {
  const LINE = '{q=60} C5:1 D5:4( | E5:4 | F5:4) G5:1';

  it('is the slur in which players change at different places, with who changes where', () => {
    expect(passages(LINE, [['m2n0', change(1), ['1o']], ['m1n1', change('1/2'), ['1i', '2i']]])).toEqual(['1-3: 1@3/2 1i 2i, 2@1 1o']);
  });

  it('is none where everyone changes at the same places', () => {
    expect(passages(LINE, [['m2n0', change(1)], ['m3n0', { kind: 'slur', slur: 'split' }]])).toEqual([]);
    expect(passages(LINE, [['m2n0', change(1), ['1o', '1i']], ['m2n0', change(1), ['2o', '2i']]])).toEqual([]);
  });

  it('is none for one player', () => {
    expect(passages(LINE, [['m2n0', change(1), ['1o']]], 1)).toEqual([]);
  });

  it('does not count the ends of printed slurs, nor a change inside a note of its own', () => {
    expect(passages('{q=60} D5:4( | E5:2) F5:2( | G5:4)', [['m1n0', change(3), ['1o']]])).toEqual(['0-1: 1@3 1o']);
  });

  it('goes on over a slur’s end that someone joins', () => {
    expect(passages('{q=60} D5:4( | E5:4) | F5:4( | G5:4)', [['m2n0', { kind: 'slur', slur: 'join' }, ['1o']], ['m2n0', change(2), ['1o']], ['m4n0', change(2), ['2i']]])).toEqual(['0-3: 2@2 1o, 4@2 2i']);
  });

  it('may be one held note', () => {
    expect(passages('{q=60} D5:16 E5:1', [['m1n0', change(5), ['1o']], ['m1n0', change('15/2'), ['2o']]])).toEqual(['0-0: 1@5 1o, 1@15/2 2o']);
  });

  it('is two where two slurs are broken', () => {
    expect(passages('{q=60} D5:2( E5:2) F5:2( G5:2)', [['m1n1', change(1), ['1o']], ['m1n3', change(1), ['1o']]])).toEqual(['0-1: 1@3 1o', '2-3: 1@7 1o']);
  });
});
