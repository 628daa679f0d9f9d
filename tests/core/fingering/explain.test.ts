import { describe, expect, it } from 'vitest';
import { compareFingerings } from '../../../core/fingering/compare.ts';
import { explain } from '../../../core/fingering/explain.ts';
import { handFacts } from '../../../core/fingering/explain/handFacts.ts';
import { fingerLine } from '../../../core/fingering/fingerLine.ts';
import { lineFrom } from '../../../core/fingering/notesInput.ts';
import type { PlainFingering } from '../../../core/fingering/output.ts';
import type { Pin } from '../../../core/fingering/pin.ts';
import { HAND_IN_ENGLISH } from '../../../core/fingering/words/english.ts';
import { noteNames } from '../../../core/fingering/words/noteNames.ts';
import { stepWords } from '../../../core/fingering/words/stepWords.ts';
import { instrumentNamed } from '../../../core/instruments/instrumentNamed.ts';

const TEMPO = 60;
const instrument = instrumentNamed('violin');
type Written = [pitch: number, spelling: string, measure: number, onset: number];
type Placed = [finger: 0 | 1 | 2 | 3 | 4, string: number, position: number];

const lineOf = (notes: Written[], slurred = true) =>
  lineFrom({ instrument: 'violin', tempo: TEMPO, notes: notes.map(([pitch, spelling, measure, onset], i) => ({ id: `n${i}`, pitch, spelling, measure, onset, duration: 1, ...(slurred ? { slur: 's' } : {}) })) }).line;

/** A fingering settled note by note, so that its steps are known beforehand. */
function settled(line: ReturnType<typeof lineOf>, places: Placed[]): PlainFingering {
  const pins = new Map<string, Pin>(places.map(([finger, string, position], i) => [`n${i}`, finger === 0 ? { finger, string } : { finger, string, position }]));
  const [best] = fingerLine(instrument, line, TEMPO, { pins, best: 1 }).fingerings;
  expect(best!.notes.map(({ finger, string }) => [finger, string])).toEqual(places.map(([finger, string]) => [finger, string]));
  return best!;
}

function said(line: ReturnType<typeof lineOf>, a: Placed[], b: Placed[]) {
  const played = { instrument, line };
  return explain(HAND_IN_ENGLISH, played, compareFingerings(played, settled(line, a), settled(line, b)));
}

describe('two fingerings in words', () => {
  const line = lineOf([[74, 'D5', 45, 0], [76, 'E5', 45, 1], [70, 'Bb4', 45, 2], [74, 'D5', 46, 0], [72, 'C5', 46, 1]]);

  it('one string with shifts that slide, against a crossing in one position', () => {
    expect(said(line, [[1, 2, 3], [2, 2, 3], [3, 3, 3], [1, 2, 3], [4, 3, 3]], [[1, 2, 3], [2, 2, 3], [1, 2, 1], [1, 2, 3], [4, 3, 3]]).differences).toEqual([
      'Measure 45: a stays in third position and crosses to the D string at the B flat and back at the D in measure 46; b shifts to first position on the A string at the B flat, shifts to third position on the A string at the D in measure 46 and slides audibly twice, most into the B flat.',
    ]);
  });

  it('an open string against the fourth finger', () => {
    const scale = lineOf([[67, 'G4', 1, 0], [69, 'A4', 1, 1], [71, 'B4', 1, 2]], false);
    expect(said(scale, [[3, 3, 1], [0, 2, 1], [1, 2, 1]], [[3, 3, 1], [4, 3, 1], [1, 2, 1]]).differences).toEqual(['Measure 1: a stays in first position, crosses to the A string at the A and plays the A open; b stays in first position and crosses to the A string at the B.']);
  });

  it('the totals count shifts, crossings, open notes and audible slides, and name the widest stretch', () => {
    const { totals } = said(line, [[1, 2, 3], [2, 2, 3], [3, 3, 3], [1, 2, 3], [4, 3, 3]], [[1, 2, 3], [2, 2, 3], [1, 2, 1], [1, 2, 3], [4, 3, 3]]);
    expect(totals[0]).toMatch(/^a: 0 shifts, 3 string crossings, 0 open notes, 0 audible slides; widest stretch \d-\d of \d+ mm, comfortable\.$/);
    expect(totals[1]).toMatch(/^b: 2 shifts, 1 string crossing, 0 open notes, 2 audible slides; widest stretch /);
  });

  it('gives the caution where one of them stretches past the limit, and none where neither does', () => {
    const wide = lineOf([[70, 'Bb4', 1, 0], [78, 'F#5', 1, 1]], false);
    expect(said(wide, [[1, 2, 1], [4, 2, 1]], [[1, 2, 1], [1, 1, 1]]).caution).toMatch(/^This passage asks a wider stretch than most published fingerings\. Pain, numbness or loss of control: stop and see a licensed clinician\.$/);
    expect(said(line, [[1, 2, 3], [2, 2, 3], [3, 3, 3], [1, 2, 3], [4, 3, 3]], [[1, 2, 3], [2, 2, 3], [1, 2, 1], [1, 2, 3], [4, 3, 3]]).caution).toBeNull();
  });

  it('says so where they are the same', () => {
    const same: Placed[] = [[1, 2, 3], [2, 2, 3], [3, 3, 3], [1, 2, 3], [4, 3, 3]];
    expect(said(line, same, same)).toMatchObject({ differences: ['The two are the same, note for note.'], costs: null });
  });
});

describe('fingerings with the same fingers', () => {
  it('are told apart by where a note lies, never by one and the same clause', () => {
    const viola = instrumentNamed('viola');
    const pitches: [number, string][] = [[60, 'C4'], [62, 'D4'], [64, 'E4'], [67, 'G4'], [67, 'G4'], [55, 'G3'], [57, 'A3'], [59, 'B3']];
    const { line: eighths } = lineFrom({ instrument: 'viola', tempo: TEMPO, notes: pitches.map(([pitch, spelling], i) => ({ id: `n${i}`, pitch, spelling, measure: 17, onset: i / 2, duration: 0.5, slur: i < 4 ? 's' : 't' })) });
    const played = { instrument: viola, line: eighths };
    const { fingerings } = fingerLine(viola, eighths, TEMPO, { pins: new Map([['n0', { finger: 2, string: 3 }], ['n2', { finger: 4 }]]), best: 40 });
    const sentences = fingerings.flatMap((a, i) => fingerings.slice(i + 1).flatMap((b) => explain(HAND_IN_ENGLISH, played, compareFingerings(played, a, b)).differences));
    const sides = sentences.filter((sentence) => sentence.includes(': a ')).map((sentence) => sentence.slice(sentence.indexOf(': a ') + 4, -1).split('; b '));
    expect(sides.length).toBeGreaterThan(20);
    expect(sides.filter(([a, b]) => a === b)).toEqual([]);
  });
});

describe('a delayed shift in words', () => {
  it('the finger reaches, the hand follows on the named note, and nothing slides', () => {
    const line = lineOf([[71, 'B4', 1, 0], [78, 'F#5', 1, 1], [76, 'E5', 1, 2]]);
    const { fingerings } = fingerLine(instrument, line, 50, { pins: new Map<string, Pin>([['n0', { finger: 1, string: 2, position: 1 }]]), aim: 'smoothest', best: 1 });
    const { steps } = handFacts({ instrument, line }, fingerings[0]!);
    expect(stepWords(HAND_IN_ENGLISH, steps[1]!, noteNames(HAND_IN_ENGLISH, line))).toMatch(/^delayed shift, the finger first, .*; stretch 1-4 of 97 mm, stretched; the hand follows on the F sharp$/);
  });
});

describe('names of notes', () => {
  it('count a pitch that comes again in its measure, and name measures where there are several', () => {
    const one = noteNames(HAND_IN_ENGLISH, lineOf([[72, 'C5', 1, 0], [70, 'Bb4', 1, 1], [72, 'C5', 1, 2]]));
    expect(['n0', 'n1', 'n2'].map(one)).toEqual(['the C', 'the B flat', 'the second C']);
    const two = noteNames(HAND_IN_ENGLISH, lineOf([[72, 'C5', 1, 0], [72, 'C5', 2, 0]]));
    expect(['n0', 'n1'].map(two)).toEqual(['the C in measure 1', 'the C in measure 2']);
  });

  it('keep double flats, sharps and a B sharp at its own letter', () => {
    const names = noteNames(HAND_IN_ENGLISH, lineOf([[69, 'Bbb4', 1, 0], [79, 'F##5', 1, 1], [72, 'B#4', 1, 2]]));
    expect(['n0', 'n1', 'n2'].map(names)).toEqual(['the B double flat', 'the F double sharp', 'the B sharp']);
  });
});
