import type { EngravedSystem } from '../../core/engraving/geometry.ts';
import type { SystemRange } from '../../core/engraving/systemRanges.ts';

/** A text and how wide (staff spaces) it is laid out, how far notes stand apart, and whether all of it stands on one line. */
export interface Layout {
  text: string;
  width: number;
  spacing: number;
  oneLine: boolean;
}

export type ToEngraver = ({ kind: 'lay'; job: number } & Layout) | { kind: 'draw'; job: number; system: number };

export type FromEngraver =
  /** `whole`: false while only the beginning is laid out, whose systems stand as they will. */
  | { kind: 'laid'; job: number; systems: SystemRange[]; whole: boolean }
  | { kind: 'drawn'; job: number; system: number; drawing: EngravedSystem; font: string | null }
  | { kind: 'failed'; job: number; why: string };
