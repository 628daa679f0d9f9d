import { describe, expect, it } from 'vitest';
import { tempoMap } from '../../../core/music/seconds.ts';
import { partOf } from '../../support/partBuilder.ts';

describe('places in seconds', () => {
  it('at 60 a quarter is a second', () => {
    expect(tempoMap(partOf('{q=60} D5:4 | E5:4'), 90).at(6)).toBe(6);
  });

  it('a new tempo counts from the note it stands on', () => {
    const tempo = tempoMap(partOf('{q=60} D5:4 | {q=120} E5:2 {q=30} E5:2 | F5:4'), 90);
    expect([4, 6, 8, 12].map((place) => tempo.at(place))).toEqual([4, 5, 9, 17]);
  });

  it('without a tempo the assumed one stands, and says so, until the first printed one', () => {
    const tempo = tempoMap(partOf('D5:4 | {q=60} E5:4'), 120);
    expect([2, 4, 8].map((place) => tempo.at(place))).toEqual([1, 2, 6]);
    expect([0, 3, 4].map((place) => tempo.isAssumed(place))).toEqual([true, true, false]);
  });

  it('a second voice that begins again at the barline does not turn time back', () => {
    const tempo = tempoMap(partOf('{q=60} D5:2 {q=120} E5:2 && {q=60} C5:4 | {q=120} D5:4'), 90);
    expect([0, 1, 2, 3, 4, 6].map((place) => tempo.at(place))).toEqual([0, 1, 2, 2.5, 3, 4]);
  });

  it('rests carry the tempo too', () => {
    expect(tempoMap(partOf('{q=60} r:4 | {q=120} r:4 | D5:4'), 90).at(8)).toBe(6);
  });
});
