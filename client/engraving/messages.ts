import type { EngravedSystem } from './geometry.ts';

/** First and last measure (ordinals) of a system. */
export interface SystemRange {
  first: number;
  last: number;
}

export type ToEngraver =
  | { kind: 'lay'; job: number; text: string; width: number; spacing: number; oneLine: boolean }
  | { kind: 'draw'; job: number; system: number };

export type FromEngraver =
  | { kind: 'laid'; job: number; systems: SystemRange[] }
  | { kind: 'drawn'; job: number; system: number; drawing: EngravedSystem; font: string | null }
  | { kind: 'failed'; job: number; why: string };
