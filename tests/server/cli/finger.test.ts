import { execFile } from 'node:child_process';
import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, describe, expect, it } from 'vitest';
import { BadInput } from '../../../server/cli/command.ts';
import { finger as command } from '../../../server/cli/finger.ts';
import { note, scoreText } from '../../support/scoreText.ts';

const root = join(import.meta.dirname, '../../..');
const folder = mkdtempSync(join(tmpdir(), 'bowline-finger-'));
afterAll(() => rmSync(folder, { recursive: true }));

function finger(...args: string[]): Promise<{ code: number; out: string; err: string }> {
  return new Promise((resolve) => {
    execFile(process.execPath, ['server/cli/bowline.mjs', 'finger', ...args], { cwd: root, maxBuffer: 1 << 24 }, (error, out, err) => resolve({ code: error ? Number(error.code) : 0, out, err }));
  });
}

let files = 0;
function file(content: unknown, ending = 'json'): string {
  files += 1;
  const path = join(folder, `${files}.${ending}`);
  writeFileSync(path, typeof content === 'string' ? content : JSON.stringify(content));
  return path;
}

interface Printed {
  fingerings: { cost: number; terms: Record<string, number>; notes: { id: string; string: number; finger: number; position: number; step: { kind: string } }[]; words?: { steps: unknown[]; totals: string; besideBest?: string[]; caution?: string; forThisHand?: { words: string[] } } }[];
  refusals: { note: string; text: string }[];
}
const printed = (out: string): Printed => JSON.parse(out) as Printed;

const scale = { instrument: 'violin', tempo: 90, notes: [67, 69, 71, 72].map((pitch, i) => ({ id: `n${i}`, pitch, measure: 1, onset: i, duration: 1 })) };

/** Two measures and a pickup that is printed as measure 0. */
const SCORE = file(
  scoreText([note('G4', 4), note('A4', 4) + note('B4', 4) + note('C5', 4) + note('D5', 4), note('E5', 4) + note('F#5', 4) + note('G2', 4) + note('A5', 4)]).replace('number="1"', 'number="0"').replace('number="2"', 'number="1"').replace('number="3"', 'number="2"'),
  'musicxml',
);
const FLUTE = file(scoreText([note('C5', 16)], { name: 'Flute' }), 'musicxml');

describe('bowline finger --notes', () => {
  it('prints fingerings, best first, each note with string, finger, position and the step to it, and nothing else beside refusals', async () => {
    const { code, out, err } = await finger('--notes', file(scale), '--best', '2');
    const { fingerings, refusals, ...rest } = printed(out);
    expect(rest).toEqual({});
    expect({ code, err, refusals }).toEqual({ code: 0, err: '', refusals: [] });
    expect(fingerings).toHaveLength(2);
    expect(fingerings[0]!.cost).toBeLessThanOrEqual(fingerings[1]!.cost);
    expect(Object.values(fingerings[0]!.terms).reduce((sum, cost) => sum + cost, 0)).toBeCloseTo(fingerings[0]!.cost, 2);
    for (const { id, step, ...place } of fingerings[0]!.notes) {
      expect(id).toMatch(/^n\d$/);
      expect(step).toMatchObject({ kind: expect.any(String) as string, mm: expect.any(Number) as number, semitones: expect.any(Number) as number, ms: expect.any(Number) as number, slide: expect.any(Number) as number });
      expect(place).toMatchObject({ string: expect.any(Number) as number, finger: expect.any(Number) as number, position: expect.any(Number) as number });
    }
  });

  it('keeps every pin in every fingering', async () => {
    const pinned = { ...scale, notes: scale.notes.map((one) => (one.id === 'n2' ? { ...one, pin: { finger: 1, string: 2, position: 1 } } : one)) };
    const { fingerings } = printed((await finger('--notes', file(pinned))).out);
    expect(fingerings.length).toBeGreaterThan(1);
    expect(fingerings.map(({ notes }) => notes[2])).toEqual(fingerings.map(() => expect.objectContaining({ finger: 1, string: 2, position: 1 }) as unknown));
  });

  it('names a note that cannot be played and where it stands, fingers the rest, and ends with 1', async () => {
    const { code, out, err } = await finger('--notes', file({ ...scale, notes: [...scale.notes, { id: 'deep', pitch: 40, measure: 2, onset: 0, duration: 1 }] }));
    expect(code).toBe(1);
    expect(printed(out).fingerings[0]!.notes).toHaveLength(4);
    expect(printed(out).refusals).toEqual([{ note: 'deep', text: expect.stringMatching(/\.$/) as string }]);
    expect(err).toContain('Note deep (measure 2): This note lies outside the violin');
  });

  it('of no notes gives no fingering and no complaint', async () => {
    expect(await finger('--notes', file({ ...scale, notes: [] }))).toMatchObject({ code: 0, out: '{"fingerings":[],"refusals":[]}\n', err: '' });
  });

  it('--explain says every step, the totals, and what is different beside the best', async () => {
    const { fingerings } = printed((await finger('--notes', file(scale), '--best', '2', '--explain')).out);
    expect(fingerings[0]!.words!.steps).toHaveLength(4);
    expect(fingerings[0]!.words).not.toHaveProperty('besideBest');
    expect(fingerings[1]!.words!.besideBest![0]).toMatch(/^(Measure 1|From measure 1 to .*): a .*; b .*\.$/);
  });

  it('--hand answers a stretch beyond it: what is too wide, what to do, and the caution without a clearance', async () => {
    const [first, second] = scale.notes;
    const fifth = { ...scale, tempo: 60, notes: [{ ...first!, pitch: 70, pin: { finger: 1, string: 2, position: 1 } }, { ...second!, pitch: 78, pin: { finger: 4, string: 2, position: 1 } }] };
    const { code, out } = await finger('--notes', file(fifth), '--explain', '--hand', file({ factor: 0.8, shortFourth: true }));
    const { caution, forThisHand } = printed(out).fingerings[0]!.words!;
    expect(code).toBe(0);
    expect(caution).toMatch(/see a licensed clinician\.$/);
    expect(forThisHand!.words[0]).toMatch(/^For this hand the stretch 1-4 of \d+ mm to the (F sharp|G flat) is too wide\.$/);
    expect(forThisHand!.words.join(' ')).toContain('ask the principal');
    expect(out).not.toMatch(/\bsafe/i);
  });
});

describe('bowline finger FILE', () => {
  it('fingers the measures that are named, counted from the first whatever is printed', async () => {
    const { code, out } = await finger(SCORE, '--part', 'P1', '--measures', '2', '--best', '1');
    expect(code).toBe(0);
    expect(printed(out).fingerings[0]!.notes).toHaveLength(4);
  });

  it('names a note it refuses by the printed measure and its pitch', async () => {
    const { code, out, err } = await finger(SCORE, '--part', 'P1');
    expect(code).toBe(1);
    expect(printed(out).fingerings[0]!.notes).toHaveLength(8);
    expect(err).toMatch(/^Note \w+ \(measure 2, G2\): This note lies outside the violin/);
  });

  it('takes fingers and strings of --pins as settled', async () => {
    const pins = file({ marks: [{ part: 'P1', measure: 2, note: 3, finger: 1, string: 2 }] });
    const { fingerings } = printed((await finger(SCORE, '--part', 'P1', '--measures', '2', '--pins', pins)).out);
    expect(fingerings.map(({ notes }) => [notes[3]!.finger, notes[3]!.string])).toEqual(fingerings.map(() => [1, 2]));
  });
});

describe('bowline finger says what cannot be used, where, and what to do, and ends with 2', () => {
  it.each<[string, () => string[], RegExp]>([
    ['no file', () => [], /Name one score file.*\nUsage: bowline finger/],
    ['no part', () => [SCORE], /--part is missing/],
    ['a part that is not there', () => [SCORE, '--part', 'P9'], /no part "P9"\. Its parts are: P1 \(Violin\)/],
    ['a part that is no string part', () => [FLUTE, '--part', 'P1'], /Flute\) is not known as a bowed string part/],
    ['measures that are not there', () => [SCORE, '--part', 'P1', '--measures', '3-9'], /--measures "3-9" should be like 3-8, within 1-3/],
    ['an aim that is not known', () => ['--notes', file(scale), '--aim', 'loudest'], /--aim "loudest" is not known; choose from usual, smoothest/],
    ['a count that is none', () => ['--notes', file(scale), '--best', '0'], /--best "0" should be a whole number from 1/],
    ['a file and notes at once', () => [SCORE, '--notes', file(scale)], /not both/],
    ['measures of notes', () => ['--notes', file(scale), '--measures', '1'], /--measures belongs to a score file/],
    ['an option that is not known', () => [SCORE, '--partt', 'P1'], /partt/],
    ['a file that is not there', () => ['--notes', join(folder, 'none.json')], /none\.json: There is no such file/],
    ['a file that is no JSON', () => ['--notes', file('{"instrument":')], /This is no JSON/],
    ['a tempo that is none', () => ['--notes', file({ ...scale, tempo: 'fast' })], /"tempo": .*\nCorrect the file/],
    ['a note without a pitch', () => ['--notes', file({ ...scale, notes: [scale.notes[0], { ...scale.notes[1], pitch: 'A' }] })], /note 2 \("n1"\), "pitch": /],
    ['a spelling that is none', () => ['--notes', file({ ...scale, notes: [{ ...scale.notes[0], spelling: 'H4' }] })], /note 1 \("n0"\), "spelling": /],
    ['two notes of one id', () => ['--notes', file({ ...scale, notes: [...scale.notes, scale.notes[0]] })], /note 5 \("n0"\): another note has this id already\./],
    ['a measure beyond all music', () => ['--notes', file({ ...scale, notes: [{ ...scale.notes[0], measure: 2_000_000_000 }] })], /note 1 \("n0"\), "measure": /],
    ['a hand that is none', () => ['--notes', file(scale), '--hand', file({ factor: 3 })], /"factor": .*\n?.*A hand is \{"factor"/],
    ['pins that name no note', () => [SCORE, '--part', 'P1', '--pins', file({ marks: [{ part: 'P1', measure: 1, note: 7, finger: 1 }] })], /Mark 1 \(measure 1, note 7\)/],
  ])('%s', async (_what, args, said) => {
    const fault = await command.run(args()).then(() => null, (error: unknown) => error);
    expect(fault).toBeInstanceOf(BadInput);
    expect((fault as BadInput).message).toMatch(said);
  });

  it('as a process: nothing on the standard output, sentences and no trace on the other', async () => {
    const { code, out, err } = await finger('--notes', file({ ...scale, tempo: 'fast' }));
    expect({ code, out }).toEqual({ code: 2, out: '' });
    expect(err).toMatch(/"tempo": .*\nCorrect the file and try again\.\n$/);
  });
});
