import type { InstrumentName } from '../../../core/music/part.ts';
import { CELLO } from './cello.ts';
import { DOUBLE_BASS } from './doubleBass.ts';
import { VIOLA } from './viola.ts';
import { VIOLIN_ONE } from './violinOne.ts';
import { VIOLIN_TWO } from './violinTwo.ts';

export interface PlannedPart {
  id: string;
  name: string;
  short: string;
  instrument: InstrumentName;
  sound: string;
  /** General MIDI program, from 1. */
  program: number;
  clef: ['G' | 'C' | 'F', number];
  /** Octaves from written to sounding. */
  octaves: number;
  music: string;
}

export const TITLE = 'Low Water';
export const MOVEMENT = 'The Crossing';
export const COMPOSER = 'Thora Wexbridge';
/** Sharps of the key. */
export const FIFTHS = 1;

export const PARTS: PlannedPart[] = [
  { id: 'P1', name: 'Violin I', short: 'Vln. I', instrument: 'violin', sound: 'strings.violin', program: 41, clef: ['G', 2], octaves: 0, music: VIOLIN_ONE },
  { id: 'P2', name: 'Violin II', short: 'Vln. II', instrument: 'violin', sound: 'strings.violin', program: 41, clef: ['G', 2], octaves: 0, music: VIOLIN_TWO },
  { id: 'P3', name: 'Viola', short: 'Vla.', instrument: 'viola', sound: 'strings.viola', program: 42, clef: ['C', 3], octaves: 0, music: VIOLA },
  { id: 'P4', name: 'Violoncello', short: 'Vc.', instrument: 'cello', sound: 'strings.cello', program: 43, clef: ['F', 4], octaves: 0, music: CELLO },
  { id: 'P5', name: 'Double bass', short: 'Db.', instrument: 'double-bass', sound: 'strings.contrabass', program: 44, clef: ['F', 4], octaves: -1, music: DOUBLE_BASS },
];

export interface Landmark {
  rehearsal?: string;
  /** Beats to a measure and value of a beat. */
  time?: [number, number];
  tempo?: { words: string; unit: 'quarter' | 'quarter.'; perMinute: number };
  words?: string;
  doubleBarBefore?: true;
}

/** What all parts share, by printed measure number. */
export const LANDMARKS: Record<string, Landmark> = {
  0: { time: [4, 4], tempo: { words: 'Andante sostenuto', unit: 'quarter', perMinute: 60 } },
  9: { rehearsal: 'A' },
  24: { words: 'poco rit.' },
  25: { rehearsal: 'B', tempo: { words: 'Poco più mosso', unit: 'quarter', perMinute: 76 } },
  40: { words: 'rit.' },
  41: { rehearsal: 'C', tempo: { words: 'Andante sostenuto', unit: 'quarter', perMinute: 60 } },
  47: { rehearsal: 'D' },
  53: { rehearsal: 'E', time: [6, 8], doubleBarBefore: true, tempo: { words: 'Allegro vivo', unit: 'quarter.', perMinute: 104 } },
  61: { rehearsal: 'F' },
  69: { rehearsal: 'G', tempo: { words: 'Meno mosso', unit: 'quarter.', perMinute: 66 } },
  77: { rehearsal: 'H', tempo: { words: 'Allegro vivo', unit: 'quarter.', perMinute: 104 } },
  81: { words: 'molto rit.', tempo: { words: 'Tranquillo', unit: 'quarter.', perMinute: 40 } },
};
