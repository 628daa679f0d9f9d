import { describe, expect, it } from 'vitest';
import type { Finger, MarkValue } from '../../../core/music/mark.ts';
import type { Seats } from '../../../core/music/seat.ts';
import { type SeatedMark, withFingerings } from '../../../core/print/fingerings.ts';
import { partOf } from '../../support/partBuilder.ts';

const on = (note: string, value: MarkValue, seats: Seats = 'all'): SeatedMark => ({ note, value, seats });
const finger = (note: string, figure: Finger, seats: Seats = 'all') => on(note, { kind: 'finger', finger: figure }, seats);
const figures = (marks: readonly SeatedMark[]) => marks.filter(({ value }) => value.kind === 'finger').map(({ note }) => note);

/** A4 B4 C5 D5 in first position on the A string, then B5 C6 in third on the E string. */
const SCALE = partOf('A4:1 B4:1 C5:1 D5:1 | B5:1 C6:1 B5:1 C6:1', { instrument: 'violin' });
const PLAIN = [finger('m1n1', 1), finger('m1n2', 2), finger('m1n3', 3), finger('m2n0', 2), finger('m2n1', 3), finger('m2n2', 2)];

describe('figures on a copy', () => {
  it('all are all', () => expect(withFingerings(SCALE, PLAIN, 'all')).toEqual(PLAIN));

  it('few are the first and the first after a shift', () => expect(figures(withFingerings(SCALE, PLAIN, 'sparse'))).toEqual(['m1n1', 'm2n0']));

  it('few keep an open string, since it might be stopped', () => {
    expect(figures(withFingerings(SCALE, [finger('m1n1', 1), finger('m1n0', 0)], 'sparse'))).toEqual(['m1n1', 'm1n0']);
  });

  it('few keep a fourth finger on the pitch of an open string', () => {
    const part = partOf('D5:1 E5:1 D5:1 E5:1', { instrument: 'violin' });
    expect(figures(withFingerings(part, [finger('m1n0', 3), finger('m1n1', 4), finger('m1n2', 3)], 'sparse'))).toEqual(['m1n0', 'm1n1']);
  });

  it('few keep reaches, substitutions and harmonics', () => {
    const marks = [finger('m1n1', 1), finger('m1n2', 2), on('m1n2', { kind: 'reach', reach: 'extension' }), on('m1n3', { kind: 'finger', finger: 3, substitution: 2 })];
    expect(figures(withFingerings(SCALE, marks, 'sparse'))).toEqual(['m1n1', 'm1n2', 'm1n3']);
  });

  it('few keep both figures where one finger takes two notes after each other, sliding or shifting', () => {
    const part = partOf('A5:1 B5:1 C6:1 B5:1 | A5:1 B5:1 D6:1 C6:1', { instrument: 'violin' });
    expect(figures(withFingerings(part, [finger('m1n0', 3), finger('m1n1', 4), finger('m1n2', 4)], 'sparse'))).toEqual(['m1n0', 'm1n1', 'm1n2']);
    expect(figures(withFingerings(part, [finger('m2n0', 3), finger('m2n1', 4), finger('m2n2', 4), finger('m2n3', 3)], 'sparse'))).toEqual(['m2n0', 'm2n1', 'm2n2']);
  });

  it('few keep the figure after a long rest', () => {
    const part = partOf('B4:1 C5:1 r:2 | r:4 | C5:2 D5:2', { instrument: 'violin' });
    expect(figures(withFingerings(part, [finger('m1n0', 1), finger('m1n1', 2), finger('m3n0', 2), finger('m3n1', 3)], 'sparse'))).toEqual(['m1n0', 'm3n0']);
  });

  it('a figure one partner needs stays for both', () => {
    const marks = [finger('m1n1', 1, ['1o']), finger('m1n1', 2, ['1i']), finger('m1n2', 2)];
    expect(figures(withFingerings(SCALE, marks, 'sparse'))).toEqual(['m1n1', 'm1n1', 'm1n2']);
  });

  it('printed figures that go are rubbed out', () => {
    const part = partOf('B4:1<1> C5:1<2> D5:1<3> r:1', { instrument: 'violin' });
    expect(withFingerings(part, [], 'sparse')).toEqual([on('m1n1', { kind: 'none', slot: 'finger' }), on('m1n2', { kind: 'none', slot: 'finger' })]);
  });

  it('none leaves bows and words, and rubs out what is printed of the left hand', () => {
    const part = partOf('B4:1<1><II> C5:1', { instrument: 'violin' });
    const bow = on('m1n0', { kind: 'bow', bow: 'down' });
    const words = on('m1n1', { kind: 'text', text: 'point' });
    expect(withFingerings(part, [finger('m1n1', 2), bow, words], 'none')).toEqual([on('m1n0', { kind: 'none', slot: 'finger' }), on('m1n0', { kind: 'none', slot: 'string' }), bow, words]);
  });

  it('few are all where the instrument is not known', () => {
    expect(withFingerings({ ...SCALE, instrument: null }, PLAIN, 'sparse')).toEqual(PLAIN);
  });
});
