import { describe, expect, it } from 'vitest';
import { marksOnNote, seatMarks } from '../../../core/check/seatMarks.ts';
import { seatsFor } from '../../../core/music/seat.ts';
import { partOf } from '../../support/partBuilder.ts';
import { marksOf, type ShortMark } from './ruleTable.ts';

const part = partOf('D5:2<1><up> E5:2');
const groupsOf = (marks: ShortMark[], players = 4) => seatMarks(part, marksOf(marks), seatsFor(players)).groups;
const fingers = (marks: ShortMark[]) => groupsOf(marks).map(({ seats, marksOn }) => `${seats.join(' ')}: ${marksOn('m1n0').finger ?? '-'}`);

describe('what stands on a note for a seat', () => {
  it('is the print where nobody has marked anything', () => {
    expect(fingers([])).toEqual(['1o 1i 2o 2i: 1']);
    expect(groupsOf([])[0]!.marksOn('m1n0')).toEqual({ finger: 1, bow: 'up', bowPrinted: true, changes: [] });
  });

  it('a mark for all goes over the print, one for a seat over both, in whatever order they come', () => {
    const forAll: ShortMark = ['m1n0', { kind: 'finger', finger: 2 }];
    const forOne: ShortMark = ['m1n0', { kind: 'finger', finger: 3 }, ['2o']];
    expect(fingers([forAll, forOne])).toEqual(['1o 1i 2i: 2', '2o: 3']);
    expect(fingers([forOne, forAll])).toEqual(['1o 1i 2i: 2', '2o: 3']);
  });

  it('of two marks for all the later one stands', () => {
    expect(fingers([['m1n0', { kind: 'finger', finger: 2 }], ['m1n0', { kind: 'finger', finger: 4 }]])).toEqual(['1o 1i 2o 2i: 4']);
  });

  it('a seat may rub out what is printed, for itself only', () => {
    expect(fingers([['m1n0', { kind: 'none', slot: 'finger' }, ['1i']]])).toEqual(['1o 2o 2i: 1', '1i: -']);
  });

  it('marks that name every seat are marks for all', () => {
    expect(fingers([['m1n0', { kind: 'finger', finger: 2 }, ['1o', '1i', '2o', '2i']]])).toEqual(['1o 1i 2o 2i: 2']);
  });

  it('a new finger takes the old substitution with it', () => {
    expect(marksOnNote(part.measures[0]!.notes[1]!, [{ kind: 'finger', finger: 3, substitution: 1 }, { kind: 'finger', finger: 2 }])).toEqual({ finger: 2, changes: [] });
  });

  it('bow changes of one note stand side by side, in order of time, each once', () => {
    const changes = (marks: ShortMark[]) => groupsOf(marks)[0]!.marksOn('m1n1').changes;
    expect(changes([['m1n1', { kind: 'change', after: '3/2' }], ['m1n1', { kind: 'change', after: 1 }], ['m1n1', { kind: 'change', after: '2/2' }]])).toEqual([1, '3/2']);
  });

  it('without seats there is one group for whoever plays', () => {
    expect(groupsOf([['m1n0', { kind: 'finger', finger: 2 }]], 0).map(({ seats, marksOn }) => [seats, marksOn('m1n0').finger])).toEqual([[[], 2]]);
  });

  it('seats with the same marks of their own are one group', () => {
    expect(groupsOf([['m1n1', { kind: 'finger', finger: 2 }, ['1i', '2i']]]).map(({ seats }) => seats)).toEqual([['1o', '2o'], ['1i', '2i']]);
  });
});

describe('what is printed', () => {
  const printed = (signs: string) => marksOnNote(partOf(`D5:1${signs}`).measures[0]!.notes[0]!, []);
  it('two figures, two strings or two bow signs on one note say nothing certain', () => {
    expect(printed('<1+3>')).toEqual({ changes: [] });
    expect(printed('<I><II>')).toEqual({ changes: [] });
    expect(printed('<up><down>')).toEqual({ changes: [] });
  });

  it('hidden signs are not there for a player', () => {
    expect(printed('<!2><!down>')).toEqual({ changes: [] });
  });

  it('thumb, harmonic and open string are read', () => {
    expect([printed('<thumb>'), printed('<harm>'), printed('<art>'), printed('<open>')]).toEqual([
      { finger: 'thumb', changes: [] }, { harmonic: 'natural', changes: [] }, { harmonic: 'artificial', changes: [] }, { finger: 0, changes: [] },
    ]);
  });
});
