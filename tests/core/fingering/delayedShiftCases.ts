import { fingerLine, type FingerLineOptions } from '../../../core/fingering/fingerLine.ts';
import type { LineNote } from '../../../core/fingering/line.ts';
import type { PlainFingering } from '../../../core/fingering/output.ts';
import type { Pin } from '../../../core/fingering/pin.ts';
import { instrumentNamed } from '../../../core/instruments/instrumentNamed.ts';

/** A note of a case: strings below the first, semitones and letters above that open string, the finger a player expects, and the position where it matters. */
type CaseNote = readonly [below: number, above: number, letters: number, finger: 1 | 2 | 3 | 4, position?: number];

export interface DelayedShift {
  name: string;
  /** Strings on which the first note may lie. */
  strings: readonly number[];
  /** Semitones up the string by which the case is tried, with the letters that go with them. */
  keys: readonly (readonly [semitones: number, letters: number])[];
  notes: readonly CaseNote[];
  /** Notes to which the finger goes first while the hand follows. */
  reached: readonly number[];
  /** Notes to which something slides; none in most. */
  slidTo: readonly number[];
}

/** Common practice, no source. */
export const CASES: readonly DelayedShift[] = [
  {
    name: 'a fifth up that resolves a step down',
    strings: [1, 2, 3, 4], keys: [[0, 0], [2, 1], [3, 2]], reached: [1], slidTo: [],
    notes: [[0, 2, 1, 1, 1], [0, 9, 5, 4], [0, 7, 4, 3]],
  },
  {
    name: 'a descent where 2 reaches back for what 1 would play',
    strings: [1, 2, 3, 4], keys: [[0, 0], [2, 1], [3, 2]], reached: [1], slidTo: [],
    notes: [[0, 10, 6, 4, 3], [0, 5, 3, 2, 2], [0, 3, 2, 1]],
  },
  {
    name: 'the same with 3 a fourth above 1 after it, as in fingered octaves',
    strings: [1, 2, 3, 4], keys: [[0, 0], [2, 1], [3, 2]], reached: [1, 3], slidTo: [],
    notes: [[0, 10, 6, 4, 3], [0, 5, 3, 2, 2], [0, 7, 4, 3, 2], [0, 2, 1, 1, 1]],
  },
  {
    name: 'a descending sequence of diminished sevenths, reaching down and catching up',
    strings: [1, 2, 3, 4], keys: [[0, 0], [2, 1], [3, 2]], reached: [3], slidTo: [],
    notes: [[0, 12, 7, 4, 4], [0, 9, 5, 2], [0, 6, 3, 1], [0, 9, 5, 4], [0, 6, 3, 2], [0, 3, 2, 1]],
  },
  {
    name: 'a descending diminished arpeggio that ends in second position, 1 staying as an anchor',
    strings: [1, 2, 3], keys: [[0, 0]], reached: [3], slidTo: [],
    notes: [[0, 8, 5, 3, 3], [0, 5, 3, 1, 3], [1, 9, 5, 4, 3], [1, 6, 3, 2, 2]],
  },
  {
    name: 'a descending chromatic run 4-3-2-1, a semitone, 4-3-2-1',
    strings: [1, 2, 3, 4], keys: [[0, 0], [2, 1]], reached: [], slidTo: [4],
    notes: [[0, 10, 6, 4, 3], [0, 9, 5, 3], [0, 8, 5, 2], [0, 7, 4, 1], [0, 6, 4, 4], [0, 5, 3, 3], [0, 4, 3, 2], [0, 3, 2, 1]],
  },
];

export const TEMPO = 50;
const OPEN_LETTERS = { violin: [37, 33, 29, 25], viola: [33, 29, 25, 21] } as const;

export interface Where {
  instrument: 'violin' | 'viola';
  string: number;
  key: readonly [semitones: number, letters: number];
}

/** Every case on every string, in every key, on violin and viola. */
export const PLACED: readonly (readonly [title: string, DelayedShift, Where])[] = CASES.flatMap((one) =>
  (['violin', 'viola'] as const).flatMap((instrument) => one.strings.flatMap((string) => one.keys.map((key) => [`${one.name}: ${instrument}, string ${string}, ${key[0]} semitones up`, one, { instrument, string, key }] as const))));

/** Quarters under one slur, as the case says, on the string and in the key asked for. */
export function caseLine({ notes }: DelayedShift, { instrument, string, key }: Where): LineNote[] {
  return notes.map(([below, above, letters], i) => ({
    id: `n${i}`,
    midi: instrumentNamed(instrument).openStrings[string + below - 1]! + above + key[0],
    step: OPEN_LETTERS[instrument][string + below - 1]! + letters + key[1],
    measure: 1, onset: i, duration: 1, at: i, chord: false, slurred: i > 0,
  }));
}

/** The hand a player expects, note by note. */
export function expectedHand({ notes }: DelayedShift, { string, key }: Where): Map<string, Pin> {
  return new Map(notes.map(([below, , , finger, position], i) => [`n${i}`, { finger, string: string + below, ...(position === undefined ? {} : { position: position + key[1] }) }]));
}

/** Where it begins, and that it stays on the strings it is written for. */
export function start(one: DelayedShift, where: Where): Map<string, Pin> {
  return new Map([...expectedHand(one, where)].map(([id, pin], i) => [id, i === 0 ? pin : { string: pin.string! }]));
}

export function smoothest({ instrument }: Where, line: LineNote[], options: FingerLineOptions): PlainFingering {
  return fingerLine(instrumentNamed(instrument), line, TEMPO, { aim: 'smoothest', best: 1, ...options }).fingerings[0]!;
}

export const fingersOf = ({ notes }: PlainFingering): string => notes.map(({ string, finger }) => `${string}:${finger}`).join(' ');
export const audible = ({ notes }: PlainFingering): number => notes.reduce((sum, { step }) => sum + step.slide, 0);

/** What the hand itself pays, without what professionals would think of it. */
export const handCost = ({ terms }: PlainFingering): number => Object.entries(terms).reduce((sum, [name, cost]) => sum + (name.startsWith('unusual') ? 0 : cost), 0);
