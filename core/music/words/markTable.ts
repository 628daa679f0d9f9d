import type { Finger, Slot } from '../mark.ts';

/** Everything that is said of a mark, as pieces; another language is another table. */
export interface MarkTable {
  nothing: Record<Slot, string>;
  finger(finger: Finger): string;
  substitution(first: string, then: string): string;
  string(numeral: string): string;
  reach: Record<'extension' | 'contraction', string>;
  harmonic: Record<'natural' | 'artificial', string>;
  bow: Record<'up' | 'down', string>;
  /** A change as the note begins, or so many beats into it: a number as "1 1/2", and whether it is more than one. */
  changeAtOnce: string;
  changeAfter(beats: string, many: boolean): string;
  noChange(change: string): string;
  retake: string;
  hooked: string;
  slur: Record<'split' | 'join', string>;
  text(text: string): string;
  everyone: string;
  seat(desk: string, outside: boolean): string;
}
