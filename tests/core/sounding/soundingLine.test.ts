import { describe, expect, it } from 'vitest';
import { beatsOf } from '../../../core/sounding/beats.ts';
import { renderSounding } from '../../../core/sounding/render.ts';
import { leastTime } from '../../../core/hand/moveTime.ts';
import { tempoMap } from '../../../core/music/seconds.ts';
import type { SoundingLine } from '../../../core/sounding/sound.ts';
import { partOf } from '../../support/partBuilder.ts';
import { heardFrom } from './passage.ts';

const slides = ({ players }: SoundingLine) => players[0]!.sounds.filter(({ attack }) => attack === 'slide');
const semitones = ({ hertzFrom, hertzTo }: { hertzFrom: number; hertzTo: number }) => 12 * Math.log2(hertzTo / hertzFrom);
const E1 = { string: 3, finger: 1 } as const;
const A1 = { string: 3, finger: 1 } as const;
const shift = { m1n0: E1, m1n1: A1 };

describe('the line that sounds', () => {
  it('slides under a slur as far as the finger goes and as long as the hand needs', () => {
    const [slide, ...more] = slides(heardFrom(partOf('{q=60} E4:1( A4:1)'), shift));
    expect(more).toEqual([]);
    expect(semitones(slide!)).toBeCloseTo(5, 6);
    // From 2 to 7 semitones on 328 mm.
    const mm = 328 * (2 ** (-2 / 12) - 2 ** (-7 / 12));
    expect(slide!.to - slide!.from).toBeCloseTo(leastTime(mm), 2);
    expect(slide!.to).toBeCloseTo(1.1, 9);
  });

  it('keeps the slide’s own length at half the tempo', () => {
    const [one, half] = [1, 0.5].map((pace) => slides(heardFrom(partOf('{q=60} E4:1( A4:1)'), shift, { pace }))[0]!);
    expect(half!.to - half!.from).toBeCloseTo(one!.to - one!.from, 9);
    expect(half!.to).toBeCloseTo(2.1, 9);
  });

  it('lets the finger that gives way slide only as far as the hand goes', () => {
    const [slide] = slides(heardFrom(partOf('{q=60} E4:1( B4:1)'), { m1n0: E1, m1n1: { string: 3, finger: 2 } }));
    expect(semitones(slide!)).toBeCloseTo(5, 6);
  });

  it.each([
    ['a rest', 'E4:1 r:1 A4:1', { m1n0: E1, m1n1: A1 }],
    ['an open string', 'E4:1( D4:1 A4:1)', { m1n0: E1, m1n1: { string: 3, finger: 0 }, m1n2: A1 }],
    ['a change of string to another finger', 'E4:1( E5:1)', { m1n0: E1, m1n1: { string: 2, finger: 2 } }],
  ] as const)('hears no slide through %s', (_, music, pins) => {
    expect(slides(heardFrom(partOf(`{q=60} ${music}`), pins))).toEqual([]);
  });

  it('cuts a note where the bow turns inside it, with the bow’s way on both sides', () => {
    const players = [{ seat: '1o', bows: [{ begins: 0, ends: 2.5, direction: 'up' as const }, { begins: 2.5, ends: 4, direction: 'down' as const }] }];
    const { sounds } = heardFrom(partOf('{q=60} E4:4'), { m1n0: E1 }, { players }).players[0]!;
    expect(sounds.map(({ attack, bow, from }) => [attack, bow, Math.round(from * 1000)])).toEqual([['bow', 'up', 100], ['change', 'down', 2600]]);
  });

  it('takes grace notes from the note before, and moves nothing else', () => {
    const { notes } = heardFrom(partOf('{q=60} E4:1 ^F4:0 G4:1'), { m1n0: E1 });
    expect(notes.map(({ from }) => Math.round(from * 100))).toEqual([10, 102, 110]);
  });

  it('holds both notes of a double stop at once', () => {
    const { sounds } = heardFrom(partOf('{q=60} [D4 A4]:2'), { m1n0: { string: 3, finger: 0 }, m1n1: { string: 2, finger: 0 } }).players[0]!;
    expect(sounds.map(({ strand, from, to }) => [strand, from, to])).toEqual([[0, 0.1, 2.1], [1, 0.1, 2.1]]);
  });

  it('spreads a section in pitch and time within a fifth of a semitone and a twentieth of a second, and the same again', () => {
    const players = Array.from({ length: 16 }, (_, i) => ({ seat: String(i), bows: [] }));
    const heard = () => heardFrom(partOf('{q=60} E4:1( A4:1)'), shift, { players });
    const line = heard();
    expect(heard()).toEqual(line);
    expect(new Set(line.players.map(({ cents }) => cents)).size).toBe(16);
    for (const { cents, sounds } of line.players) {
      expect(Math.abs(cents)).toBeLessThan(20);
      expect(Math.abs(sounds[0]!.from - 0.1)).toBeLessThan(0.05);
    }
  });

  it('is rendered the same again, sample for sample, within -1 and 1', () => {
    const line = heardFrom(partOf('{ff} {q=60} E4:1( A4:1)'), shift);
    const [one, two] = [renderSounding(line, 'violin', 8000), renderSounding(line, 'violin', 8000)];
    expect(one).toEqual(two);
    expect(Math.max(...one.map(Math.abs))).toBeLessThan(1);
    expect(Math.max(...one.map(Math.abs))).toBeGreaterThan(0.1);
  });
});

describe('the beat', () => {
  it('falls on the beats of the time, the first of each measure marked; six eighths in two', () => {
    const part = partOf('E4:3 | E4:3');
    part.measures[0]!.time = { beats: '3', beatType: '4' };
    part.measures[1]!.time = { beats: '6', beatType: '8' };
    expect(beatsOf(part, tempoMap(part, 60), 1, 2)).toEqual([{ second: 0, first: true }, { second: 1, first: false }, { second: 2, first: false }, { second: 3, first: true }, { second: 4.5, first: false }]);
  });
});
