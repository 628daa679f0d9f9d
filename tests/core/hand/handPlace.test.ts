import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { handMoves, handPlaces, type StoppingFinger } from '../../../core/hand/handPlace.ts';
import type { StringNumber } from '../../../core/instruments/instrument.ts';
import { instrumentNamed } from '../../../core/instruments/instrumentNamed.ts';
import { midiOf, type Pitch } from '../../../core/music/pitch.ts';
import { partOf } from '../../support/partBuilder.ts';

const corpus = process.env.CORPUS_DIR;
const violin = instrumentNamed('violin');
const cello = instrumentNamed('cello');
const bass = instrumentNamed('double-bass');
const pitchOf = (text: string): Pitch => partOf(`${text}:1`).measures[0]!.notes[0]!.pitch!;
const stopped = (text: string, finger: StoppingFinger, string?: StringNumber) => ({ pitch: pitchOf(text), midi: midiOf(pitchOf(text)), finger, ...(string ? { string } : {}) });

describe('where the hand is', () => {
  it('position follows the letter name, not the distance (common practice)', () => {
    expect(handPlaces(violin, stopped('G#5', 1, 1))[0]!.position).toBe(2);
    expect(handPlaces(violin, stopped('Ab5', 1, 1))[0]!.position).toBe(3);
  });

  it('is open among several strings while none is marked', () => {
    expect(handPlaces(violin, stopped('D5', 1)).map(({ string, position }) => [string, position])).toEqual([[2, 3], [3, 7], [4, 11]]);
  });

  it('is nowhere where a finger cannot be meant', () => {
    expect(handPlaces(violin, stopped('A4', 1, 2))).toEqual([]);
    expect(handPlaces(violin, stopped('G4', 1, 2))).toEqual([]);
  });

  it('a violin’s hand rests within a position and moves between two', () => {
    const [first] = handPlaces(violin, stopped('B4', 1, 2));
    expect(handMoves(violin, first!, handPlaces(violin, stopped('E5', 4, 2))[0]!)).toBe(0);
    expect(handMoves(violin, first!, handPlaces(violin, stopped('D5', 1, 2))[0]!)).toBe(3);
  });

  it('a cello’s hand reaches a semitone back without moving', () => {
    const [first] = handPlaces(cello, stopped('B3', 1, 1));
    expect(handMoves(cello, first!, handPlaces(cello, stopped('Bb3', 1, 1))[0]!)).toBe(0);
    expect(handMoves(cello, first!, handPlaces(cello, stopped('D4', 1, 1))[0]!)).toBe(3);
  });

  it('a bass’s hand covers a whole tone, and moves for the next semitone (Simandl)', () => {
    const [half] = handPlaces(bass, stopped('Ab2', 1, 1));
    expect(handMoves(bass, half!, handPlaces(bass, stopped('Bb2', 4, 1))[0]!)).toBe(0);
    expect(handMoves(bass, half!, handPlaces(bass, stopped('A2', 1, 1))[0]!)).toBe(1);
  });

  interface ScaleNote { midi: number; string: string; position: number; finger: number }

  it.skipIf(!corpus)('gives the printed position of every stopped note of the three-octave violin scales (needs CORPUS_DIR)', () => {
    const scales = JSON.parse(readFileSync(join(corpus!, 'handbook/violin_scales_3oct.json'), 'utf8')) as { key: string; notes: ScaleNote[] }[];
    let [agree, all] = [0, 0];
    for (const { key, notes } of scales) {
      const flat = /^[A-G]b/.test(key);
      for (const { midi, string, position, finger } of notes) {
        if (finger === 0) continue;
        const letters = flat ? ['C', 'Db', 'D', 'Eb', 'E', 'F', 'Gb', 'G', 'Ab', 'A', 'Bb', 'B'] : ['C', 'C#', 'D', 'D#', 'E', 'F', 'F#', 'G', 'G#', 'A', 'A#', 'B'];
        const pitch = pitchOf(`${letters[midi % 12]!}${Math.floor(midi / 12) - 1}`);
        const places = handPlaces(violin, { pitch, midi, finger: finger as StoppingFinger, string: (violin.stringNames.indexOf(string) + 1) as StringNumber });
        all++;
        if (places[0]?.position === position) agree++;
      }
    }
    expect(all).toBeGreaterThan(100);
    expect(agree).toBe(all);
  });

  it.skipIf(!corpus)('puts every finger of the cello chart where its position has it, closed or reaching back (needs CORPUS_DIR)', () => {
    const { cello: chart } = JSON.parse(readFileSync(join(corpus!, 'handbook/positions.json'), 'utf8')) as { cello: Record<string, { first_finger_semitone: number; closed: Record<string, number> | null; extended_back: Record<string, number> | null }> };
    const natural = ['C', 'C#', 'D', 'D#', 'E', 'F', 'F#', 'G', 'G#', 'A', 'A#', 'B'];
    let seen = 0;
    for (const { first_finger_semitone: first, closed, extended_back: extended } of Object.values(chart)) {
      for (const [finger, above] of [...Object.entries(closed ?? {}), ...Object.entries(extended ?? {})]) {
        const midi = cello.openStrings[0] + above;
        const pitch = pitchOf(`${natural[midi % 12]!}${Math.floor(midi / 12) - 1}`);
        const [place] = handPlaces(cello, { pitch, midi, finger: Number(finger) as StoppingFinger, string: 1 });
        expect(Math.abs(place!.finger1 - first)).toBeLessThanOrEqual(cello.give);
        seen++;
      }
    }
    expect(seen).toBeGreaterThan(30);
  });

  it.skipIf(!corpus)('sees the shifts of ten violinists: most of those they made, and few they did not (needs CORPUS_DIR)', () => {
    const folder = join(corpus!, 'fingering/tnua');
    const [sharps, flats] = [['C', 'C#', 'D', 'D#', 'E', 'F', 'F#', 'G', 'G#', 'A', 'A#', 'B'], ['C', 'Db', 'D', 'Eb', 'E', 'F', 'Gb', 'G', 'Ab', 'A', 'Bb', 'B']];
    const seen = { both: 0, onlyOurs: 0, onlyTheirs: 0 };
    for (const file of readdirSync(folder).filter((name) => name.endsWith('.csv'))) {
      // The data has no spelling; the sonata in F is the one written with flats.
      const letters = /beeth/.test(file) ? flats : sharps;
      const rows = readFileSync(join(folder, file), 'utf8').trim().split('\n').slice(1).map((line) => line.split(',').map(Number));
      const played = rows.map(([midi, start, , , string, position, finger]) => ({ midi: midi!, start: start!, string: string!, position: position!, finger: finger! }));
      played.slice(1).forEach((to, index) => {
        const from = played[index]!;
        if (from.string !== to.string || !from.finger || !to.finger || !from.string || from.start === to.start) return;
        const [a, b] = [from, to].map(({ midi, finger, string }) => handPlaces(violin, { midi, pitch: pitchOf(`${letters[midi % 12]!}${Math.floor(midi / 12) - 1}`), finger: finger as StoppingFinger, string: (5 - string) as StringNumber })[0]);
        if (!a || !b) return;
        const [ours, theirs] = [handMoves(violin, a, b) > 0, from.position !== to.position];
        if (ours || theirs) seen[ours && theirs ? 'both' : ours ? 'onlyOurs' : 'onlyTheirs']++;
      });
    }
    console.log('shifts of ten violinists:', seen);
    expect(seen.both / (seen.both + seen.onlyTheirs)).toBeGreaterThan(0.8);
    expect(seen.both / (seen.both + seen.onlyOurs)).toBeGreaterThan(0.85);
  });
});
