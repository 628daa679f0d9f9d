import type { InstrumentName } from '../music/part.ts';

export type Millimetres = number;
/** Equal-tempered semitones; natural harmonics lie at fractions of one. */
export type Semitones = number;
/** String 1 is the highest. */
export type StringNumber = 1 | 2 | 3 | 4;

/** What the checker knows of an instrument; each number's origin stands in its file. */
export interface Instrument {
  name: InstrumentName;
  /** Sounding MIDI keys of the open strings, string 1 (the highest) first. */
  openStrings: readonly [number, number, number, number];
  /** Letter names of the open strings, in the same order. */
  stringNames: readonly [string, string, string, string];
  /** Nut to bridge. */
  stringLength: Millimetres;
  /** Playing length of the hair. */
  bowHair: Millimetres;
  /** How long one bow lasts here, of what it lasts on a violin. */
  bowShare: number;
  /** Highest stopped note above an open string: about where the fingerboard ends. */
  top: Semitones;
  /** Where each finger falls above finger 1 in the plain hand, fingers 1 to 4. */
  hand: readonly [Semitones, Semitones, Semitones, Semitones];
  /** How a player knows that the hand has moved: by the letter names under the fingers, or by the semitone. */
  positionsBy: 'letter' | 'semitone';
  /** How far a finger falls from its place in the plain hand while the hand stays. */
  give: Semitones;
  /** Keys of core/SOURCES.md. */
  sources: readonly string[];
}
