import type { StringNumber } from '../instruments/instrument.ts';

/** One way to play one note: where it is stopped, with which finger, and where the hand is. */
export interface Place {
  string: StringNumber;
  /** 0 open, 1-4, 5 the thumb. */
  finger: number;
  /** Violin and viola: by letter name, 1-12. Cello and bass: finger 1 in semitones above the open string. */
  position: number;
  /** Semitones above the open string. */
  above: number;
  /** Semitones by which the finger leaves its place in the plain hand; negative reaches back. */
  off: number;
  /** Letters by which the place in the hand differs from the spelling; 0 where it agrees. */
  respelled: number;
  /** A natural harmonic: it sounds on by itself while the hand moves. */
  harmonic?: true;
}

/** The thumb as a finger number inside the engine; outside it is called "thumb". */
export const THUMB = 5;

/** How many places to consider: what is usual, with the long reaches of delayed shifts, or all that a mark or a chord may ask for. */
export type Breadth = 'usual' | 'reaches' | 'all';
