import type { LineNote } from '../line.ts';
import { isChromatic, keysAround } from '../spell.ts';

/** Interval value where there is no note to measure to. */
export const NONE = 99;

/** What the fitted features see of one note and its surroundings. All small whole numbers. */
export interface Context {
  midi: number;
  /** Letter name, C = 0. */
  letter: number;
  chromatic: number;
  /** Staff steps from the note before. */
  steps: number;
  /** Semitones between neighbours, clipped to 13: before-last to last, last to this, this to next, next to next but one. */
  d0: number;
  d1: number;
  d2: number;
  d3: number;
  /** Semitones to this note from the last but one, and from this to the next but one. */
  twoBack: number;
  twoOn: number;
  /** Duration class, 0 (a 32nd) to 5 (over a half). */
  db: number;
  /** Start of the measure 0, beat 1, half beat 2, elsewhere 3. */
  beat: number;
  /** Duration beside the local median, 0 to 3. */
  relative: number;
  /** Local mean duration, 0 to 5. */
  tempo: number;
  /** Begins after a rest 2, after a very long note 1. */
  phraseStart: number;
  phraseEnd: number;
  /** Highest of its surroundings 1, lowest 2. */
  extreme: number;
  /** Silence before it: 0, over 0.2 quarters 1, over 0.9 quarters 2. */
  gap: number;
  chord: number;
  first: number;
}

const classOf = (value: number, limits: readonly number[]): number => {
  const at = limits.findIndex((limit) => value <= limit);
  return at === -1 ? limits.length : at;
};
const clip = (value: number, limit: number): number => Math.max(-limit, Math.min(limit, value));

const beatOf = (onset: number): number => (onset === 0 ? 0 : Number.isInteger(onset) ? 1 : Number.isInteger(onset * 2) ? 2 : 3);

function medianAround(durations: readonly number[], i: number): number {
  const window = durations.slice(Math.max(0, i - 16), i + 17).sort((a, b) => a - b);
  return window[window.length >> 1]!;
}

/** The feature context of every note of a line. Pure; linear in the number of notes. Windows and classes: chosen on the training data. */
export function contextsOf(line: readonly LineNote[]): Context[] {
  const midi = line.map((note) => note.midi);
  const durations = line.map((note) => note.duration);
  const keys = keysAround(midi);
  const interval = (i: number, j: number): number => (i < 0 || j >= midi.length ? NONE : clip(midi[j]! - midi[i]!, 13));
  const silenceBefore = (i: number): number => (i === 0 ? 0 : Math.max(0, line[i]!.at - line[i - 1]!.at - line[i - 1]!.duration));
  const isVeryLong = (i: number): boolean => durations[i]! >= 2 && durations[i]! >= 2.6 * medianAround(durations, i);
  return line.map((note, i) => {
    const median = medianAround(durations, i) || 0.25;
    const around = midi.slice(Math.max(0, i - 4), i + 5);
    const mean = durations.slice(Math.max(0, i - 8), i + 9);
    const gap = silenceBefore(i);
    const after = i + 1 < line.length ? silenceBefore(i + 1) : 9;
    return {
      midi: note.midi,
      letter: note.step % 7,
      chromatic: isChromatic(keys[i]!, note.midi) ? 1 : 0,
      steps: i === 0 ? NONE : clip(note.step - line[i - 1]!.step, 8),
      d0: interval(i - 2, i - 1),
      d1: interval(i - 1, i),
      d2: interval(i, i + 1),
      d3: interval(i + 1, i + 2),
      twoBack: interval(i - 2, i),
      twoOn: interval(i, i + 2),
      db: classOf(note.duration, [0.13, 0.26, 0.51, 1.01, 2.01]),
      beat: beatOf(note.onset),
      relative: classOf(note.duration / median, [0.6, 1.4, 2.6]),
      tempo: classOf(mean.reduce((a, b) => a + b, 0) / mean.length, [0.22, 0.3, 0.42, 0.6, 0.9]),
      phraseStart: i === 0 || gap > 0.2 ? 2 : isVeryLong(i - 1) ? 1 : 0,
      phraseEnd: after > 0.2 ? 2 : isVeryLong(i) ? 1 : 0,
      extreme: note.midi === Math.max(...around) ? 1 : note.midi === Math.min(...around) ? 2 : 0,
      gap: gap > 0.9 ? 2 : gap > 0.2 ? 1 : 0,
      chord: note.chord ? 1 : 0,
      first: note.onset === 0 ? 1 : 0,
    };
  });
}
