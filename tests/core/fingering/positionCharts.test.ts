import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { placesOf } from '../../../core/fingering/placesOf.ts';
import { instrumentNamed } from '../../../core/instruments/instrumentNamed.ts';
import { harmonicSounding, harmonicTouched } from '../../../core/hand/harmonics.ts';

interface Charts {
  violin_viola: Record<string, Record<string, [low: number, high: number]>>;
  cello: Record<string, { first_finger_semitone: number; closed: Record<string, number>; extended_back: Record<string, number> | null }>;
  bass_simandl: Record<string, Record<string, number>>;
}

const folder = process.env.CORPUS_DIR;
const charts = folder ? (JSON.parse(readFileSync(join(folder, 'handbook/positions.json'), 'utf8')) as Charts) : null;
const STRINGS = [1, 2, 3, 4] as const;
const OPEN_LETTERS = { violin: [37, 33, 29, 25], viola: [33, 29, 25, 21] } as const;

describe.skipIf(!charts)('position charts (needs CORPUS_DIR)', () => {
  it.each(['violin', 'viola'] as const)('the %s has every note of positions I to XII under its finger, by letter name', (name) => {
    const instrument = instrumentNamed(name);
    for (const [position, fingers] of Object.entries(charts!.violin_viola)) {
      if (position === 'half') continue;
      for (const [finger, [low, high]] of Object.entries(fingers)) {
        for (const string of STRINGS) {
          const letter = OPEN_LETTERS[name][string - 1]! + Number(position) + Number(finger) - 1;
          for (const above of [low, high]) {
            const places = placesOf(instrument, instrument.openStrings[string - 1]! + above, letter, 'all');
            expect(places, `${position} ${finger} ${string} ${above}`).toContainEqual(expect.objectContaining({ string, position: Number(position), finger: Number(finger), off: 0, respelled: 0 }));
          }
        }
      }
    }
  });

  // Davidoff; finger 4 not above IV 1/2, three fingers above.
  it('the cello has every note of the closed and the extended hand up to IV 1/2, and 1-2-3 above', () => {
    const cello = instrumentNamed('cello');
    let seen = 0;
    for (const { first_finger_semitone: first, closed, extended_back: extended } of Object.values(charts!.cello).filter((entry) => typeof entry === 'object' && 'closed' in entry)) {
      for (const [off, hand] of [[0, closed], [1, extended ?? {}]] as const) {
        for (const [finger, above] of Object.entries(hand)) {
          if (off === 1 && finger === '1') continue;
          for (const string of STRINGS) {
            const places = placesOf(cello, cello.openStrings[string - 1]! + above, 0);
            expect(places, `${first} ${finger} ${string} ${off}`).toContainEqual(expect.objectContaining({ string, finger: Number(finger), position: first - off, off }));
            seen += 1;
          }
        }
      }
    }
    expect(seen).toBeGreaterThan(150);
  });

  // Simandl.
  it('the bass has every note of 1-2-4, half position to VII, 3 for 4 from VI-VII', () => {
    const bass = instrumentNamed('double-bass');
    for (const fingers of Object.values(charts!.bass_simandl)) {
      for (const [finger, above] of Object.entries(fingers)) {
        for (const string of STRINGS) {
          const position = fingers['1']!;
          const wanted = finger === '4' && position >= 11 ? 3 : Number(finger);
          expect(placesOf(bass, bass.openStrings[string - 1]! + above, 0)).toContainEqual(expect.objectContaining({ string, finger: wanted, position }));
        }
      }
    }
  });
});

// The ideal string: nodes at k/n of its length.
describe('open strings and touched harmonics', () => {
  it.each(['violin', 'viola', 'cello', 'double-bass'] as const)('every open string of the %s is finger 0', (name) => {
    const instrument = instrumentNamed(name);
    for (const string of STRINGS) expect(placesOf(instrument, instrument.openStrings[string - 1]!, OPEN_LETTERS.violin[string - 1]!)).toContainEqual(expect.objectContaining({ string, finger: 0, above: 0 }));
  });

  it.each([[12, 12], [7, 19], [19, 19], [5, 24], [24, 24], [4, 28], [9, 28], [16, 28], [3, 31]])('touched %i semitones up a string sounds %i above it', (touched, sounds) => {
    expect(Math.round(harmonicTouched(touched)!.sounds)).toBe(sounds);
    expect(harmonicSounding(sounds)!.touched.map(Math.round)).toContain(touched);
  });
});
