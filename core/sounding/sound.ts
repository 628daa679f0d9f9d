import type { Direction } from '../bowing/strokes.ts';
import type { Seconds } from '../music/seconds.ts';

/** How a sound begins: a bow set on the string, a bow turned, a finger that falls under one bow, a finger that slides, a string plucked. */
export type Attack = 'bow' | 'change' | 'finger' | 'slide' | 'pluck';

/** A stretch of one string's sound. */
export interface Sound {
  /** Note that is played; a slide belongs to the note it leaves. */
  note: string;
  from: Seconds;
  to: Seconds;
  /** Fundamental at its two ends; they differ in a slide only. */
  hertzFrom: number;
  hertzTo: number;
  attack: Attack;
  /** Null where no bow of known direction is drawn. */
  bow: Direction | null;
  open: boolean;
  /** 0, or the place of its note in a chord: sounds of one strand follow each other. */
  strand: number;
}

/** A corner of a curve of loudness that is straight in decibels from corner to corner. */
export interface LevelCorner {
  at: Seconds;
  /** Below a full ff. */
  decibels: number;
}

export interface SoundingPlayer {
  /** Who it is; a seat, or any name. */
  seat: string;
  /** Out of tune with the section by so much. */
  cents: number;
  /** In order of time within each strand. */
  sounds: Sound[];
  level: LevelCorner[];
}

/** What is heard of a passage, from 0 s. */
export interface SoundingLine {
  seconds: Seconds;
  players: SoundingPlayer[];
  /** When each note begins, as all mean it. */
  notes: { note: string; from: Seconds }[];
  clicks: { at: Seconds; first: boolean }[];
}

/** A sound a player makes with one bow drawn one way, in seconds of the part. */
export interface DrawnBow {
  begins: Seconds;
  ends: Seconds;
  direction: Direction;
}
