import { readdirSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { fingerLine } from '../../../core/fingering/fingerLine.ts';
import { harmonicPlaces } from '../../../core/fingering/harmonicPlaces.ts';
import { lineFrom, type NotesInput } from '../../../core/fingering/notesInput.ts';
import { instrumentNamed } from '../../../core/instruments/instrumentNamed.ts';
import { csvRows } from '../../bench/fingering/csv.ts';
import { eighths } from './lines.ts';

const violin = instrumentNamed('violin');
const scale = [69, 71, 73, 74, 76, 78, 79, 81];

function fingered(instrument: NotesInput['instrument'], pitches: number[], sign: Partial<NotesInput['notes'][number]>) {
  const notes = pitches.map((pitch, i) => ({ id: `n${i}`, pitch, measure: 1, onset: i, duration: 1, ...sign }));
  return fingerLine(instrumentNamed(instrument), lineFrom({ instrument, tempo: 80, notes }).line, 80);
}

describe('a trill', () => {
  it.each(['violin', 'viola', 'cello'] as const)('on the %s is never left to the fourth finger, though the plain note may be', (name) => {
    const lowest = instrumentNamed(name).openStrings[3];
    const pitches = Array.from({ length: 13 }, (_, i) => lowest + i);
    const { fingerings, refusals } = fingered(name, pitches, { trill: true });
    expect(refusals).toEqual([]);
    for (const { notes } of fingerings) expect(notes.every(({ finger }) => finger !== 4)).toBe(true);
  });

  it('on a fourth finger that is settled is refused by name', () => {
    const notes = [{ id: 'a', pitch: 76, measure: 1, onset: 0, duration: 1, trill: true as const, pin: { finger: 4 as const } }];
    const { line, pins } = lineFrom({ instrument: 'violin', tempo: 80, notes });
    expect(fingerLine(violin, line, 80, { pins }).refusals.map(({ note }) => note)).toEqual(['a']);
  });
});

// Nodes of an ideal string; artificial harmonics after Sametini (in Martens, Violin Mastery, 1919).
describe('harmonics', () => {
  const harmonic = (midi: number) => harmonicPlaces(violin, { ...eighths([midi])[0]!, harmonic: 'natural' }, 'usual');

  it.each([[81, 2, 12], [88, 1, 12], [86, 3, 24], [88, 2, 7], [83, 1, 7], [74, 4, 19], [81, 1, 5]])('key %i is touched on string %i, %i semitones up', (midi, string, above) => {
    expect(harmonic(midi)).toContainEqual(expect.objectContaining({ string, above }));
  });

  it('are touched where a node lies, and nowhere else', () => {
    const nodes = [2, 3, 4, 5, 6, 7, 8].flatMap((n) => Array.from({ length: n - 1 }, (_, k) => Math.round(12 * Math.log2(n / (n - k - 1)))));
    for (let midi = 55; midi < 104; midi += 1) for (const { above, finger } of harmonic(midi)) {
      expect(nodes).toContain(above);
      expect(finger).toBeGreaterThan(0);
    }
  });

  it('artificial ones are stopped with 1 on the violin and with the thumb or 1 on the cello', () => {
    const { fingerings: [first] } = fingered('violin', scale, { harmonic: 'artificial' });
    expect(first!.notes.every(({ finger }) => finger === 1)).toBe(true);
    const { fingerings: [low] } = fingered('cello', scale, { harmonic: 'artificial' });
    expect(low!.notes.every(({ finger }) => finger === 1 || finger === 'thumb')).toBe(true);
  });

  it.skipIf(!process.env.CORPUS_DIR)('of those that violinists play most have the string and the finger among theirs (needs CORPUS_DIR)', () => {
    const folder = join(process.env.CORPUS_DIR!, 'fingering/ytvf');
    const seen = { natural: 0, string: 0, finger: 0 };
    for (const file of readdirSync(folder).filter((name) => name.endsWith('.csv'))) {
      for (const row of csvRows(join(folder, file))) {
        if (row.harmonic !== '1' || row.string === '' || row.finger === '0') continue;
        const places = harmonic(Number(row.pitch)).filter(({ string }) => string === 5 - Number(row.string));
        seen.natural += 1;
        if (places.length > 0) seen.string += 1;
        if (places.some(({ finger }) => finger === Number(row.finger))) seen.finger += 1;
      }
    }
    console.log('natural harmonics of the performers:', seen);
    expect(seen.string / seen.natural).toBeGreaterThan(0.9);
  });
});
