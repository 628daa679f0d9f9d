import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { playedTogether } from '../../../core/matching/together.ts';
import type { Part } from '../../../core/music/part.ts';
import { partOf } from '../../support/partBuilder.ts';

const LEAST = { unison: 4, rhythm: 6 };
const runsOf = (a: string | Part, b: string | Part, least = LEAST) =>
  playedTogether(typeof a === 'string' ? partOf(a) : a, typeof b === 'string' ? partOf(b) : b, least).map(({ likeness, a: { from, to }, notes }) => ({ likeness, from, to, notes: notes.length }));

describe('parts that play the same music at the same time', () => {
  it('are in unison in octaves and across spellings', () => {
    expect(runsOf('G#5:1 A5:1 B5:1 C6:1 | D5:4', 'Ab4:1 A4:1 Cb5:1 B#4:1 | D4:4')).toEqual([{ likeness: 'unison', from: 1, to: 2, notes: 5 }]);
  });

  it('are in unison where one is a transposing bass', () => {
    const music = 'D3:1 E3:1 F3:1 G3:1';
    expect(runsOf(partOf(music, { instrument: 'cello' }), partOf(music, { instrument: 'double-bass' }))).toEqual([{ likeness: 'unison', from: 1, to: 1, notes: 4 }]);
  });

  it('are in unison where one ties what the other holds', () => {
    expect(runsOf('D5:2 E5:2~ | E5:1 F5:1 G5:2', 'D5:2 E5:2~ | E5:1/2~ E5:1/2 F5:1 G5:2')).toEqual([{ likeness: 'unison', from: 1, to: 2, notes: 4 }]);
  });

  it('are in unison though their slurs differ, and though one has a grace note more', () => {
    expect(runsOf('D5:1( E5:1) F5:1 G5:1', 'D5:1 E5:1( F5:1 ^A5:1 G5:1)')).toEqual([{ likeness: 'unison', from: 1, to: 1, notes: 4 }]);
  });

  it('are in one rhythm where pitches differ and slurs agree, over more notes', () => {
    expect(runsOf('D5:1( E5:1) F5:1 G5:1 | D5:1 E5:3', 'B4:1( C5:1) D5:1 E5:1 | B4:1 C5:3')).toEqual([{ likeness: 'rhythm', from: 1, to: 2, notes: 6 }]);
  });

  it('are apart where slurs differ and pitches do too', () => {
    expect(runsOf('D5:1( E5:1) F5:1 G5:1 | D5:1 E5:3', 'B4:1 C5:1 D5:1( E5:1) | B4:1 C5:3')).toEqual([]);
  });

  it('are apart where one trembles and the other holds, and where a canon follows a beat later', () => {
    expect(runsOf('D5:1* E5:1* F5:1* G5:1*', 'D5:1 E5:1 F5:1 G5:1')).toEqual([]);
    expect(runsOf('D5:1 E5:1 F5:1 G5:1 | A5:1 r:3', 'r:1 D5:1 E5:1 F5:1 | G5:1 A5:1 r:2')).toEqual([]);
  });

  it('go on over rests that both have', () => {
    expect(runsOf('D5:1 r:1 E5:1 r:1 | r:4 | F5:2 G5:2', 'D4:1 r:1 E4:1 r:1 | r:4 | F4:2 G4:2')).toEqual([{ likeness: 'unison', from: 1, to: 3, notes: 4 }]);
  });

  it('end where one has a note between', () => {
    expect(runsOf('D5:1 E5:1 F5:1 G5:1 | D5:1 E5:1 F5:1 G5:1', 'D5:1 E5:1 F5:1 G5:1/2 G5:1/2 | D5:1 E5:1 F5:1 G5:1')).toEqual([{ likeness: 'unison', from: 2, to: 2, notes: 4 }]);
  });
});

/** Per measure four quarters, each a letter or a rest, or the same pitch an octave up. */
const beat = fc.constantFrom('D4:1', 'E4:1', 'D5:1', 'r:1', 'E4:1/2 E4:1/2');
const music = fc.array(beat, { minLength: 2, maxLength: 24 });
const written = (beats: readonly string[]) => Array.from({ length: Math.ceil(beats.length / 4) }, (_, i) => beats.slice(4 * i, 4 * i + 4).join(' ')).join(' | ');

interface Plain {
  id: string;
  at: string;
  music: string;
}

/** Notes straight from the part, without what is under test. */
const plain = (part: Part): Plain[] =>
  part.measures.flatMap(({ ordinal, notes }) => notes.filter(({ rest }) => !rest).map(({ id, onset, duration, pitch }) => ({ id, at: `${ordinal}/${onset}`, music: `${pitch!.step} ${duration}` })));

describe('unisons at the same time', () => {
  it('are exactly the pairs that agree, cut wherever either part has something else, as long as they go', () => {
    fc.assert(
      fc.property(music, music, fc.integer({ min: 1, max: 4 }), (one, other, least) => {
        const [a, b] = [partOf(written(one)), partOf(written(other))];
        const [notesA, notesB] = [plain(a), plain(b)];
        const agree = (i: number, j: number) => notesA[i] !== undefined && notesB[j] !== undefined && notesA[i].at === notesB[j].at && notesA[i].music === notesB[j].music;
        const wanted: string[] = [];
        for (let i = 0; i < notesA.length; i += 1) {
          for (let j = 0; j < notesB.length; j += 1) {
            if (!agree(i, j) || agree(i - 1, j - 1)) continue;
            let length = 1;
            while (agree(i + length, j + length)) length += 1;
            if (length >= least) wanted.push(Array.from({ length }, (_, k) => `${notesA[i + k]!.id}=${notesB[j + k]!.id}`).join(' '));
          }
        }
        const found = playedTogether(a, b, { unison: least, rhythm: 1000 }).map(({ notes }) => notes.map((pair) => pair.join('=')).join(' '));
        expect(found).toEqual(wanted);
      }),
      { numRuns: 150 },
    );
  });
});
