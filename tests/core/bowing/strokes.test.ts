import { describe, expect, it } from 'vitest';
import { partOf } from '../../support/partBuilder.ts';
import type { ShortMark } from '../check/ruleTable.ts';
import { asText, bowsIn } from './bowing.ts';

const bows = (music: Parameters<typeof bowsIn>[0], marks?: ShortMark[]): string => asText(bowsIn(music, marks).strokes);

describe('what goes on one bow', () => {
  it.each([
    ['separate notes', 'D5:1 E5:1', 'm1n0 / m1n1'],
    ['a slur', 'D5:1( E5:1 F5:1) G5:1', 'm1n0 m1n1 m1n2 / m1n3'],
    ['a slur across a barline', 'D5:1( | E5:1) F5:1', 'm1n0 m2n0 / m2n1'],
    ['a slur that ends where the next begins', 'D5:1( E5:1) F5:1( G5:1)', 'm1n0 m1n1 / m1n2 m1n3'],
    ['tied notes', 'D5:1~ D5:1~ | D5:1 E5:1', 'm1n0 m1n1 m2n0 / m2n1'],
    ['a tie within a slur that goes on', 'D5:1( D5:1~ | D5:1 E5:1)', 'm1n0 m1n1 m2n0 m2n1'],
    ['a tie sign over a rest binds nothing', 'D5:1~ r:1 D5:1', 'm1n0 / m1n1'],
    ['chord members belong to the bow of their chord', '[D4 B4]:1 [E4 C5]:1', 'm1n0 / m1n2'],
    ['grace notes go with the note after them', 'D5:1 ^E5:1 ^D5:1 E5:1', 'm1n0 / m1n1 m1n2 m1n3'],
    ['plucked notes take no bow', 'D5:1 {pizz} E5:1 {arco} F5:1', 'm1n0 / m1n2'],
  ])('%s', (_, music, expected) => {
    expect(bows(music)).toBe(expected);
  });

  it('grace notes slurred to the note before them end its bow', () => {
    const part = partOf('D5:1 ^E5:1 ^D5:1 E5:1');
    expect(bows({ ...part, slurs: [{ from: 'm1n0', to: 'm1n2' }] })).toBe('m1n0 m1n1 m1n2 / m1n3');
  });

  it('a slur over two slurs is a phrase, not a bow', () => {
    const part = partOf('D5:1( E5:1) F5:1( G5:1)');
    expect(bows({ ...part, slurs: [...part.slurs, { from: 'm1n0', to: 'm1n3' }] })).toBe('m1n0 m1n1 / m1n2 m1n3');
  });

  it('a slur over a slurred grace note stays one bow', () => {
    const part = partOf('D5:1( ^E5:1 F5:1 G5:1)');
    expect(bows({ ...part, slurs: [...part.slurs, { from: 'm1n1', to: 'm1n2' }] })).toBe('m1n0 m1n1 m1n2 m1n3');
  });

  it('each voice has its own bows', () => {
    const part = partOf('D5:1( E5:1) && B4:1 C5:1');
    expect(bows(part)).toBe('m1n0 m1n1');
  });
});

describe('what marks do to it', () => {
  const SLUR = 'D5:2( E5:1 F5:1)';
  it.each<[string, string, ShortMark[], string]>([
    ['a split begins a bow', SLUR, [['m1n1', { kind: 'slur', slur: 'split' }]], 'm1n0 / m1n1 m1n2'],
    ['a change at the beginning of a note begins a bow', SLUR, [['m1n2', { kind: 'change', after: 0 }]], 'm1n0 m1n1 / m1n2'],
    ['a change inside a note divides it', SLUR, [['m1n0', { kind: 'change', after: '1/2' }]], 'm1n0 / m1n0 m1n1 m1n2'],
    ['two changes inside a note', SLUR, [['m1n0', { kind: 'change', after: '3/2' }], ['m1n0', { kind: 'change', after: '1/2' }]], 'm1n0 / m1n0 / m1n0 m1n1 m1n2'],
    ['a change past the end of a note is no change of that note', SLUR, [['m1n1', { kind: 'change', after: 1 }]], 'm1n0 m1n1 m1n2'],
    ['a join goes on to the next note', 'D5:1 E5:1 F5:1', [['m1n0', { kind: 'slur', slur: 'join' }]], 'm1n0 m1n1 / m1n2'],
    ['a join over a rest has nothing to join', 'D5:1 r:1 F5:1', [['m1n0', { kind: 'slur', slur: 'join' }]], 'm1n0 / m1n1'],
    ['a hooked note stays on the bow', 'D5:1 E5:1 F5:1', [['m1n1', { kind: 'hooked' }]], 'm1n0 m1n1 / m1n2'],
    ['a sign of direction under a slur begins a bow', SLUR, [['m1n1', { kind: 'bow', bow: 'up' }]], 'm1n0 / m1n1 m1n2'],
    ['a sign of direction after a grace note belongs to the bow begun', '^C5:1( D5:1)', [['m1n1', { kind: 'bow', bow: 'up' }]], 'm1n0 m1n1'],
    ['a retake after grace notes belongs to the bow they begin', 'C5:1 ^D5:1 D5:1', [['m1n2', { kind: 'retake' }]], 'm1n0 / m1n1 m1n2'],
    ['a retake begins a bow', SLUR, [['m1n2', { kind: 'retake' }]], 'm1n0 m1n1 / m1n2'],
    ['a later change rubbed out', SLUR, [['m1n0', { kind: 'change', after: 1 }], ['m1n0', { kind: 'none', slot: 'change' }]], 'm1n0 m1n1 m1n2'],
    ['one change of two rubbed out', SLUR, [['m1n0', { kind: 'change', after: 1 }], ['m1n0', { kind: 'change', after: '1/2' }], ['m1n0', { kind: 'none', slot: 'change', after: 1 }]], 'm1n0 / m1n0 m1n1 m1n2'],
  ])('%s', (_, music, marks, expected) => {
    expect(bows(music, marks)).toBe(expected);
  });

  it('the direction is that of the sign on its first sounding note', () => {
    const { strokes } = bowsIn('^C5:1 D5:1<up> E5:1<down> F5:1');
    expect(strokes.map(({ direction, printed }) => [direction, printed])).toEqual([['up', true], ['down', true], [null, false]]);
  });

  it('a retake on the note that grace notes lead to is that of their bow', () => {
    const { strokes } = bowsIn('C5:1 ^D5:1 D5:1 E5:1', [['m1n2', { kind: 'retake' }]]);
    expect(strokes.map(({ retake }) => retake)).toEqual([false, true, false]);
  });

  it('the pieces of a divided note add up to it', () => {
    const { strokes } = bowsIn('{q=30} D5:4', [['m1n0', { kind: 'change', after: '3/2' }]]);
    expect(strokes.map(({ begins, end, cutAfter }) => [begins.second, begins.at, end, cutAfter])).toEqual([[0, 0, 3, '3/2'], [3, '3/2', 8, null]]);
  });

  it('a rest is counted in seconds before the bow that follows it', () => {
    expect(bowsIn('{q=60} D5:1 r:2 E5:1 F5:1').strokes.map(({ restBefore }) => restBefore)).toEqual([Infinity, 2, 0]);
  });
});
