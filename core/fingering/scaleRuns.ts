import type { LineNote } from './line.ts';

/** Of fewer notes the open strings make as good a scale: chosen, not measured. */
const LEAST = 12;

/** A long scale: its first and last notes, and which way it goes. */
export interface ScaleRun {
  from: number;
  to: number;
  up: boolean;
}

const isStep = (semitones: number): boolean => Math.abs(semitones) === 1 || Math.abs(semitones) === 2;

/** Whether the two steps around a note belong to one scale: a tone or a semitone each, the same way, not two semitones in a row. */
function goesOn(line: readonly LineNote[], i: number): boolean {
  const [before, after] = [line[i]!.midi - line[i - 1]!.midi, line[i + 1]!.midi - line[i]!.midi];
  return isStep(before) && isStep(after) && before * after > 0 && Math.abs(before + after) > 2 && !line[i]!.chord && !line[i + 1]!.chord;
}

/**
 * The scales of a line of twelve notes or more in one direction, by the indices of their notes. Linear.
 * Example: two octaves of C major and a leap after them are one scale of 15 notes; a chromatic scale is none.
 */
export function scaleRuns(line: readonly LineNote[]): ScaleRun[] {
  const runs: ScaleRun[] = [];
  for (let from = 0; from + LEAST <= line.length; ) {
    let to = from + 1;
    while (to + 1 < line.length && goesOn(line, to)) to += 1;
    if (to - from + 1 >= LEAST) runs.push({ from, to, up: line[to]!.midi > line[from]!.midi });
    from = to;
  }
  return runs;
}
