import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { fingerLine } from '../../../core/fingering/fingerLine.ts';
import { instrumentNamed } from '../../../core/instruments/instrumentNamed.ts';
import { eighths } from './lines.ts';

const folder = process.env.CORPUS_DIR;
const handbook = <T>(name: string): T[] => (folder ? (JSON.parse(readFileSync(join(folder, 'handbook', name), 'utf8')) as T[]) : []);

interface CelloScale {
  key: string;
  variant: string;
  midi: number[];
  finger: number[];
}
interface ViolinScale {
  key: string;
  notes: { midi: number; string: string; position: number; finger: number }[];
}

const cello = instrumentNamed('cello');
const violin = instrumentNamed('violin');

// Davidoff, Violoncell-Schule (1888).
describe.skipIf(!folder)('printed cello scales (needs CORPUS_DIR)', () => {
  const printed = handbook<CelloScale>('cello_davidoff_scales.json');
  const usual = printed.filter(({ variant }) => variant.startsWith('usual'));

  it('there are 19 of them', () => expect(printed).toHaveLength(19));

  it.each(printed)('$key, $variant, is among the five best where the section has settled its open strings so', ({ midi, finger, variant }) => {
    const openStrings = variant.startsWith('no') ? 'avoided' : 'free';
    const { fingerings } = fingerLine(cello, eighths(midi, 'cello'), 90, { openStrings });
    expect(fingerings.map(({ notes }) => notes.map((note) => note.finger).join(' '))).toContain(finger.join(' '));
  });

  it('E major comes first with its printed positions', () => {
    const scale = usual.find(({ key }) => key === 'E major')!;
    const [{ notes } = { notes: [] }] = fingerLine(cello, eighths(scale.midi, 'cello'), 90, { best: 1 }).fingerings;
    expect(notes.map(({ finger }) => finger)).toEqual(scale.finger);
    expect(notes.map(({ position }) => position)).toEqual([3, 3, 3, 1.5, 1.5, 1.5, 0, 0, 0, 3.5, 3.5, 3.5, 2, 2, 2]);
  });
});

describe.skipIf(!folder)('three-octave violin scales (needs CORPUS_DIR)', () => {
  const scales = handbook<ViolinScale>('violin_scales_3oct.json');

  it('there are seven of them', () => expect(scales).toHaveLength(7));

  it.each(scales)('$key can be settled note for note and is kept', ({ notes }) => {
    const line = eighths(notes.map(({ midi }) => midi));
    const pin = ({ string, position, finger }: ViolinScale['notes'][number]) => ({ string: 'EADG'.indexOf(string) + 1, finger: finger as 1, ...(finger === 0 ? {} : { position }) });
    const { fingerings, refusals } = fingerLine(violin, line, 90, { best: 1, pins: new Map(notes.map((note, i) => [line[i]!.id, pin(note)])) });
    expect(refusals).toEqual([]);
    expect(fingerings[0]!.notes.map(({ string, finger }) => [string, finger])).toEqual(notes.map((note) => ['EADG'.indexOf(note.string) + 1, note.finger]));
  });
});

// Simandl: 1-2-4 over a whole tone, half position to VII.
describe('the double bass hand', () => {
  const bass = instrumentNamed('double-bass');

  it('plays G major over one octave in first position with open strings', () => {
    const [{ notes } = { notes: [] }] = fingerLine(bass, eighths([31, 33, 35, 36, 38, 40, 42, 43], 'double-bass'), 90, { best: 1 }).fingerings;
    expect(notes.map(({ string, finger }) => `${string}:${finger}`)).toEqual(['4:2', '3:0', '3:1', '3:2', '2:0', '2:1', '2:4', '1:0']);
  });

  it('never uses the third finger in the neck positions', () => {
    for (let midi = 29; midi <= 52; midi += 1) {
      for (const { notes } of fingerLine(bass, eighths([midi], 'double-bass'), 90).fingerings) expect(notes[0]!.position <= 6 && notes[0]!.finger === 3).toBe(false);
    }
  });
});
