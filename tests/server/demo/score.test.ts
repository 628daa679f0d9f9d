import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { pathToFileURL } from 'node:url';
import { XmlDocument, XsdValidator, type XmlElement } from 'libxml2-wasm';
import { xmlRegisterFsInputProviders } from 'libxml2-wasm/lib/nodejs.mjs';
import { describe, expect, it } from 'vitest';
import { demoScore } from '../../../server/demo/score/writeScore.ts';

/** Reads the document by XPath alone, so that the builder is not asked about itself. */
interface Sound { measure: number; at: number; until: number; midi: number; chord: boolean; voice: string; slur: string[]; dynamic: string; pizzicato: boolean; rest: boolean }

const SEMITONES: Record<string, number> = { C: 0, D: 2, E: 4, F: 5, G: 7, A: 9, B: 11 };
const text = (element: XmlElement, path: string): string => element.get(path)?.content ?? '';
const number = (element: XmlElement, path: string): number => Number(text(element, path) || 0);

function soundsOf(part: XmlElement): { sounds: Sound[]; lengths: Map<string, number[]> } {
  const sounds: Sound[] = [];
  const lengths = new Map<string, number[]>();
  let dynamic = '', pizzicato = false, start = 0;
  part.find('measure').forEach((measure, index) => {
    let at = 0, last = 0, longest = 0;
    const ends: number[] = [];
    for (const child of (measure as XmlElement).find('*') as XmlElement[]) {
      if (child.name === 'direction') {
        dynamic = (child.get('direction-type/dynamics/*') as XmlElement | null)?.name ?? dynamic;
        const sound = child.get('sound/@pizzicato')?.content;
        if (sound !== undefined) pizzicato = sound === 'yes';
      }
      if (child.name === 'backup') {
        ends.push(at);
        at -= number(child, 'duration');
      }
      if (child.name !== 'note') continue;
      const chord = child.get('chord') !== null;
      const duration = number(child, 'duration');
      const onset = chord ? last : at;
      const rest = child.get('rest') !== null;
      const midi = rest ? 0 : 12 * (number(child, 'pitch/octave') + 1) + SEMITONES[text(child, 'pitch/step')]! + number(child, 'pitch/alter');
      sounds.push({
        measure: index, at: start + onset, until: start + onset + duration, midi, chord, voice: text(child, 'voice'), dynamic, pizzicato, rest,
        slur: child.find('notations/slur/@type').map((type) => type.content),
      });
      if (!chord) { last = at; at += duration; }
      longest = Math.max(longest, at);
    }
    lengths.set((measure as XmlElement).get('@number')!.content, [...ends, at]);
    start += longest;
  });
  return { sounds, lengths };
}

const document = XmlDocument.fromString(demoScore());
const parts = (document.find('/score-partwise/part') as XmlElement[]).map(soundsOf);
const [first, second] = parts as [ReturnType<typeof soundsOf>, ReturnType<typeof soundsOf>];
const line = first.sounds.filter(({ rest, voice, chord }) => !rest && voice === '1' && !chord);
const steps = line.slice(1).map((sound, i) => sound.midi - line[i]!.midi);
const hasRun = (wanted: (steps: number[]) => boolean, length: number): boolean => steps.some((_, i) => i + length <= steps.length && wanted(steps.slice(i, i + length)));
const bySlur = (): Sound[][] => {
  const groups: Sound[][] = [];
  let open: Sound[] | null = null;
  for (const sound of line) {
    if (sound.slur.includes('start')) open = [];
    open?.push(sound);
    if (open !== null && sound.slur.includes('stop')) { groups.push(open); open = null; }
  }
  return groups;
};
const words = (n: number): string[] => document.find(`/score-partwise/part[${n}]//words`).map((word) => word.content);
const TICKS = 12;

describe('the invented piece', () => {
  it('has five string parts of 85 measures that all add up, after an upbeat of one quarter', () => {
    expect(parts.map(({ lengths }) => lengths.size)).toEqual([85, 85, 85, 85, 85]);
    for (const { lengths } of parts) {
      for (const [measure, ends] of lengths) {
        const full = measure === '0' ? TICKS : Number(measure) < 53 ? 4 * TICKS : 3 * TICKS;
        expect(ends.every((end) => end === full), `measure ${measure}: ${ends.join()}`).toBe(true);
      }
    }
    expect(document.get('/score-partwise/part[1]/measure[1]/@implicit')?.content).toBe('yes');
  });

  it('stays on each instrument: from its lowest open string to a note an orchestral player has', () => {
    // Lowest strings G3, G3, C3, C2, E2 as written; upper ends from memory.
    const ranges = [[55, 100], [55, 93], [48, 84], [36, 74], [40, 67]] as const;
    parts.forEach(({ sounds }, i) => {
      const pitched = sounds.filter(({ rest }) => !rest).map(({ midi }) => midi);
      expect(Math.min(...pitched)).toBeGreaterThanOrEqual(ranges[i]![0]);
      expect(Math.max(...pitched)).toBeLessThanOrEqual(ranges[i]![1]);
    });
  });

  it('has a slur in pp that at its tempo lasts longer than 12 seconds, more than one violin bow', () => {
    const long = bySlur().filter((notes) => notes[0]!.dynamic === 'pp' && (notes.at(-1)!.until - notes[0]!.at) / TICKS > 12);
    expect(long).toHaveLength(1);
    expect(document.find('/score-partwise/part[1]//sound/@tempo').map((tempo) => Number(tempo.content)).slice(0, 3)).toEqual([60, 76, 60]);
  });

  it('has chromatic runs upwards and downwards of eleven semitone steps', () => {
    expect(hasRun((run) => run.every((step) => step === 1), 11)).toBe(true);
    expect(hasRun((run) => run.every((step) => step === -1), 11)).toBe(true);
  });

  it('has a descending diminished arpeggio: minor thirds only, over more than an octave', () => {
    expect(hasRun((run) => run.every((step) => step === -3), 5)).toBe(true);
  });

  it('has a leap wider than an octave under one slur in piano', () => {
    expect(bySlur().some((notes) => notes.some((note, i) => i > 0 && note.dynamic === 'p' && note.midi - notes[i - 1]!.midi > 12))).toBe(true);
  });

  it('has the second violins an octave below the first for four measures, and double stops in octaves later', () => {
    const at = (sounds: Sound[]) => sounds.filter(({ measure, rest }) => !rest && measure >= 33 && measure <= 36);
    expect(at(second.sounds).map(({ at: onset, midi }) => [onset, midi + 12])).toEqual(at(first.sounds).map(({ at: onset, midi }) => [onset, midi]));
    const octaves = first.sounds.filter((sound, i) => sound.chord && sound.midi - first.sounds[i - 1]!.midi === 12);
    expect(octaves.length).toBeGreaterThanOrEqual(9);
  });

  it('has the violins in rhythmic unison in the lively part', () => {
    const onsets = (sounds: Sound[]) => sounds.filter(({ measure, rest, chord }) => !rest && !chord && measure >= 61 && measure <= 65).map(({ at: onset }) => onset);
    expect(onsets(first.sounds)).toEqual(onsets(second.sounds));
  });

  it('divides the first violins, in chords and in two voices, and brings them back together', () => {
    expect(words(1)).toEqual(expect.arrayContaining(['div.', 'unis.', 'pizz.', 'arco', 'rit.']));
    expect(first.sounds.filter(({ voice }) => voice === '2').length).toBeGreaterThan(0);
    expect(first.sounds.some(({ pizzicato, rest }) => pizzicato && !rest)).toBe(true);
    expect(line.at(-1)!.pizzicato).toBe(false);
  });

  it('prints letters, hairpins, triplets, ties, articulations and a few bowings and fingerings', () => {
    const count = (path: string): number => document.find(`/score-partwise/part[1]//${path}`).length;
    expect(document.find('/score-partwise/part[1]//rehearsal').map((letter) => letter.content).join('')).toBe('ABCDEFGH');
    for (const path of ['wedge', 'tuplet', 'tie', 'staccato', 'accent', 'fermata', 'up-bow', 'down-bow', 'fingering', 'metronome']) expect(count(path), path).toBeGreaterThan(0);
    expect(count("wedge[@type='stop']")).toBe(count("wedge[@type!='stop']"));
    expect(count("tie[@type='stop']")).toBe(count("tie[@type='start']"));
    expect(count("slur[@type='stop']")).toBe(count("slur[@type='start']"));
    expect(count("beam[.='begin']")).toBe(count("beam[.='end']"));
  });
});

describe.skipIf(!process.env.CORPUS_DIR)('the invented piece against the published schema (needs CORPUS_DIR)', () => {
  it('is valid MusicXML 4.0', () => {
    xmlRegisterFsInputProviders();
    const folder = join(process.env.CORPUS_DIR!, 'musicxml-4.0-schema');
    const schema = readFileSync(join(folder, 'musicxml.xsd'), 'utf8').replaceAll('http://www.musicxml.org/xsd/', pathToFileURL(folder).href + '/');
    const validator = XsdValidator.fromDoc(XmlDocument.fromString(schema));
    expect(() => validator.validate(document)).not.toThrow();
    const broken = XmlDocument.fromString(demoScore().replace('<rest/>', '<rest/><rest/>'));
    expect(() => validator.validate(broken)).toThrow();
  });
});
