import { describe, expect, it } from 'vitest';
import { hearFor } from '../../../client/hearing/hearFor.ts';
import type { HearQuestion } from '../../../client/hearing/messages.ts';
import { noteAt } from '../../../client/hearing/noteAt.ts';
import { seatBows } from '../../../client/hearing/seatBows.ts';
import { BOW_LIMIT } from '../../../core/bowing/bowLength.ts';
import { violin } from '../../../core/instruments/violin.ts';
import { tempoMap } from '../../../core/music/seconds.ts';
import { partOf } from '../../support/partBuilder.ts';

const part = partOf('{p} {q=60} D5:1 E5:1 | F5:4~ | F5:4');
const question: HearQuestion = { from: 'm1n0', to: 'm1n1', fingering: null, marks: [], seats: ['1o', '1i'], seat: 'all', settings: {}, who: 'one', pace: 1, click: false };
const energy = (samples: Float32Array, from: number, to: number, rate: number) => samples.slice(from * rate, to * rate).reduce((sum, value) => sum + value * value, 0);

describe('a passage of a part as samples', () => {
  it('lasts as long as the music at its tempo, twice as long at half of it, with silence around', () => {
    const [whole, half] = [hearFor(part, question), hearFor(part, { ...question, pace: 0.5 })];
    expect(whole.notes.map(({ note, from }) => [note, Math.round(from * 100) / 100])).toEqual([['m1n0', 0.1], ['m1n1', 1.1]]);
    expect((half.samples.length - whole.samples.length) / whole.rate).toBeCloseTo(2, 2);
  });

  it('says which note sounds at any moment, none before the first', () => {
    const { notes } = hearFor(part, question);
    expect([0.05, 0.5, 1.2, 9].map((at) => noteAt(notes, at))).toEqual([null, 'm1n0', 'm1n1', 'm1n1']);
  });

  it('has a click on the beat where one is asked for, and is the same without it elsewhere', () => {
    const [plain, clicked] = [hearFor(part, question), hearFor(part, { ...question, click: true })];
    const difference = clicked.samples.map((value, i) => value - plain.samples[i]!);
    expect(energy(difference, 0.1, 0.15, plain.rate)).toBeGreaterThan(1);
    expect(energy(difference, 1.1, 1.15, plain.rate)).toBeGreaterThan(1);
    expect(energy(difference, 0.2, 1.05, plain.rate)).toBe(0);
  });

  it('is plucked where the part says so: the sound falls away under the note, which a bow would hold', () => {
    const fallOf = (music: string) => {
      const { samples, rate } = hearFor(partOf(music), { ...question, to: 'm1n0' });
      return 10 * Math.log10(energy(samples, 0.2, 0.4, rate) / energy(samples, 1.6, 1.8, rate));
    };
    expect(fallOf('{p} {q=60} D5:2')).toBeLessThan(3);
    expect(fallOf('{p} {q=60} {pizz} D5:2')).toBeGreaterThan(30);
  });

  it('begins with the passage, wherever in the part it lies', () => {
    expect(hearFor(part, { ...question, from: 'm2n0', to: 'm2n0' }).notes).toEqual([{ note: 'm2n0', from: expect.closeTo(0.1, 5) }]);
  });

  it('is refused where the part names no string instrument', () => {
    expect(() => hearFor({ ...part, instrument: null }, question)).toThrow(/string instrument/);
  });
});

describe('the bows of a section in a passage', () => {
  const setting = { instrument: violin, tempo: tempoMap(part, 60), table: BOW_LIMIT, assumedDynamic: 'mf' as const };
  const marks = [{ note: 'm2n0', value: { kind: 'change' as const, after: 2 }, seats: ['1i'] }];
  const begins = (who: HearQuestion['who'], seat: HearQuestion['seat']) => seatBows(part, { ...question, marks, who, seat }, { from: 2, to: 3 }, 'm2n0', setting).map(({ seat: one, bows }) => [one, bows.filter((bow) => bow.ends > 2).map((bow) => bow.begins)]);

  it('are each seat’s own: who changes inside the held note changes alone', () => {
    expect(begins('section', 'all')).toEqual([['1o', [2]], ['1i', [2, 4]]]);
  });

  it('are those of the seat shown when one player is heard', () => {
    expect(begins('one', '1i')).toEqual([['1i', [2, 4]]]);
    expect(begins('one', '1o')).toEqual([['1o', [2]]]);
  });
});
