import { describe, expect, it } from 'vitest';
import { carryMarks } from '../../../../core/matching/editions/carryMarks.ts';
import type { Mark, MarkValue } from '../../../../core/music/mark.ts';
import type { Part } from '../../../../core/music/part.ts';
import { partOf } from '../../../support/partBuilder.ts';

const TUNE = 'C5:1 D5:1 E5:1 F#5:1 | G5:1 A5:1 B5:1 D5:1 | E5:2 G5:2 | A5:1 C5:1 F#5:2';
const FINGER: MarkValue = { kind: 'finger', finger: 2 };

const notesIn = (part: Part) => part.measures.flatMap(({ ordinal, notes }) => notes.filter(({ rest }) => !rest).map((note, i) => ({ id: note.id, place: `${ordinal}.${i}` })));
const everywhere = (part: Part, value: MarkValue = FINGER): Mark[] => notesIn(part).map(({ id }) => ({ note: id, value }));
const placeOf = (part: Part, id: string) => notesIn(part).find((note) => note.id === id)?.place;

function told(before: string, after: string, value: MarkValue = FINGER) {
  const [older, newer] = [partOf(before), partOf(after)];
  const result = carryMarks(older, newer, everywhere(older, value));
  const why = result.lost.map(({ mark, why: reason, maybe }) => [placeOf(older, mark.note), reason, maybe && placeOf(newer, maybe.note)]);
  return { ...result, why, kept: result.kept.map(({ note }) => placeOf(newer, note)) };
}

describe('a mark on a note', () => {
  it('is listed where the note is another one, or stands beside one that is, with the likeliest place', () => {
    const { why, kept, changed } = told(TUNE, TUNE.replace('A5:1 B5:1', 'A5:1 C6:1'));
    expect(why).toEqual([['2.1', 'beside', '2.1'], ['2.2', 'changed', '2.2'], ['2.3', 'beside', '2.3']]);
    expect(kept).toHaveLength(10);
    expect(changed).toEqual([{ before: { from: 2, to: 2 }, after: { from: 2, to: 2 } }]);
  });

  it('is listed where its note is held longer, and where a silence beside it is longer', () => {
    expect(told(TUNE, TUNE.replace('E5:2 G5:2', 'E5:3 G5:1')).why.map(([place, why]) => [place, why])).toEqual([['2.3', 'beside'], ['3.0', 'changed'], ['3.1', 'changed'], ['4.0', 'beside']]);
    expect(told('C5:1 D5:1 r:2 | E5:1 G5:1 A5:2', 'C5:1 D5:1 r:3 | E5:1 G5:1 A5:2').why.map(([place, why]) => [place, why])).toEqual([['1.1', 'beside'], ['2.0', 'beside']]);
  });

  it('goes along over other barlines, where a held note is divided into two that are tied', () => {
    const { why, kept, changed, measures } = told(TUNE, 'C5:1 D5:1 | E5:1 F#5:1 G5:1 A5:1 | B5:1 D5:1 E5:1~ | E5:1 G5:2 A5:1 C5:1 F#5:2');
    expect([why, changed]).toEqual([[], []]);
    expect(kept).toEqual(['1.0', '1.1', '2.0', '2.1', '2.2', '2.3', '3.0', '3.1', '3.2', '4.1', '4.2', '4.3', '4.4']);
    expect(measures).toEqual([1, 2, 3, 4]);
  });

  it('on a note that was tied into another is listed where the two are one note now', () => {
    expect(told('C5:1 D5:2~ D5:1 | E5:4 | G5:4', 'C5:1 D5:3 | E5:4 | G5:4').why).toEqual([['1.2', 'tied', '1.1']]);
  });

  it('in a figure that is repeated is listed in every repetition where one of them is gone: nobody can know which', () => {
    const { why, kept } = told('C5:2 D5:2 | E5:1 G5:1 E5:1 G5:1 | E5:1 G5:1 E5:1 G5:1 | E5:1 G5:1 E5:1 G5:1 | A5:2 F#5:2', 'C5:2 D5:2 | E5:1 G5:1 E5:1 G5:1 | E5:1 G5:1 E5:1 G5:1 | A5:2 F#5:2');
    const reasons = new Set(why.map(([, reason]) => reason));
    expect([...reasons].every((reason) => reason === 'repeated' || reason === 'gone' || reason === 'beside')).toBe(true);
    expect(kept).toEqual(['1.0', '4.1']);
  });

  it('in a figure that comes elsewhere too is not drawn to it', () => {
    const figure = 'E5:1 G5:1 A5:1 B5:1';
    const { kept } = told(`C5:4 | ${figure} | D5:2 F#5:2 | G5:4 | A5:4`, `C5:4 | D5:2 F#5:2 | G5:4 | A5:4 | ${figure}`);
    expect(kept.filter((place) => place!.startsWith('5.'))).toEqual([]);
  });

  it('of the bow is listed where the printed slur on its note is another one; a fingering there is not', () => {
    const [before, after] = [TUNE.replace('C5:1 D5:1 E5:1', 'C5:1( D5:1 E5:1)'), TUNE.replace('C5:1 D5:1 E5:1', 'C5:1( D5:1) E5:1')];
    expect(told(before, after, { kind: 'bow', bow: 'up' }).why).toEqual([['1.1', 'slur', '1.1'], ['1.2', 'slur', '1.2']]);
    expect(told(before, after).why).toEqual([]);
  });

  it('on a note that neither edition has is told as unknown, and lost and kept are all there were', () => {
    const part = partOf(TUNE);
    const { kept, lost } = carryMarks(part, part, [...everywhere(part), { note: 'nowhere', value: FINGER }]);
    expect(kept).toEqual(everywhere(part));
    expect(lost).toEqual([{ mark: { note: 'nowhere', value: FINGER }, measure: null, why: 'unknown', maybe: null }]);
  });
});
