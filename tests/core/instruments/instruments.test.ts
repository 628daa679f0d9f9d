import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { instrumentNamed, withLowestString } from '../../../core/instruments/instrumentNamed.ts';

const NAMES = ['violin', 'viola', 'cello', 'double-bass'] as const;
const corpus = process.env.CORPUS_DIR;

describe('the four instruments', () => {
  it('are strung in fifths, the bass in fourths', () => {
    for (const name of NAMES) {
      const { openStrings } = instrumentNamed(name);
      expect(openStrings.slice(1).map((key, index) => openStrings[index]! - key)).toEqual(Array(3).fill(name === 'double-bass' ? 5 : 7));
    }
  });

  it('name their strings by the letter they sound', () => {
    for (const name of NAMES) {
      const { openStrings, stringNames } = instrumentNamed(name);
      expect(stringNames.map((letter) => ({ C: 0, D: 2, E: 4, G: 7, A: 9 })[letter])).toEqual(openStrings.map((key) => key % 12));
    }
  });

  it('grow longer in the string and shorter in the bow', () => {
    const lengths = NAMES.map((name) => instrumentNamed(name).stringLength);
    const hair = NAMES.map((name) => instrumentNamed(name).bowHair);
    expect(lengths).toEqual([...lengths].sort((a, b) => a - b));
    expect(hair).toEqual([...hair].sort((a, b) => b - a));
  });

  it('take another lowest string, but none above string 3', () => {
    expect(withLowestString(instrumentNamed('double-bass'), 24).openStrings).toEqual([43, 38, 33, 24]);
    expect(() => withLowestString(instrumentNamed('double-bass'), 33)).toThrow(/below string 3/);
  });

  it.skipIf(!corpus)('sound the open strings of the handbook (needs CORPUS_DIR)', () => {
    const book = JSON.parse(readFileSync(join(corpus!, 'handbook/positions.json'), 'utf8')) as Record<string, Record<string, number>>;
    const open = (key: string) => Object.values(book[key]!).sort((a, b) => b - a);
    expect(['violin_open_midi', 'viola_open_midi', 'cello_open_midi', 'bass_open_midi_sounding'].map(open)).toEqual(NAMES.map((name) => [...instrumentNamed(name).openStrings]));
  });
});
