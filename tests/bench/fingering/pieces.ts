import type { LineNote } from '../../../core/fingering/line.ts';

export interface Label {
  /** 1 = highest; 0 where the data leave it blank. */
  string: number;
  /** As the data number it; on the cello finger 1 in semitones. */
  position: number;
  /** 5 is the thumb. */
  finger: number;
  /** Extended hand, cello only. */
  off?: number;
}

/** A piece with the fingerings of one or more players; a player may lack a note. */
export interface Piece {
  name: string;
  work: string;
  line: LineNote[];
  players: (Label | null)[][];
}
