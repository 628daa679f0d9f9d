import { describe, expect, it } from 'vitest';
import { counted, measureName, seatsInWords, stringNumeral } from '../../../core/check/words.ts';
import { seatsFor } from '../../../core/music/seat.ts';
import { partOf } from '../../support/partBuilder.ts';

describe('words of the checker', () => {
  it.each([
    [['3o', '3i'], 'desk 3'],
    [['2i'], 'desk 2 inside'],
    [['1o', '1i', '3o', '3i'], 'desks 1 and 3'],
    [['1o', '1i', '2o', '4i'], 'desk 1, desk 2 outside and desk 4 inside'],
    [seatsFor(12), 'everyone'],
    [[], 'everyone'],
  ])('%j are %s', (seats, expected) => {
    expect(seatsInWords(seats, seatsFor(12))).toBe(expected);
  });

  it('a single player at the last desk is a desk outside', () => {
    expect(seatsInWords(['2o'], seatsFor(3))).toBe('desk 2 outside');
  });

  it('measures are called as printed', () => {
    const name = (number: string, ordinal: number) => measureName({ ...partOf('D5:1', { numbers: [number] }).measures[0]!, ordinal });
    expect([name('12', 13), name('X1', 4), name('', 21), name('', 112), name(' ', 3)]).toEqual(['measure 12', 'measure X1', 'the 21st measure', 'the 112th measure', 'the 3rd measure']);
  });

  it('strings are Roman, numbers agree with their nouns', () => {
    expect([stringNumeral(1), stringNumeral(4), counted(1, 'bow'), counted(2, 'bow')]).toEqual(['I', 'IV', '1 bow', '2 bows']);
  });
});
