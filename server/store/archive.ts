import type { KeptSet, KeptSetView } from '../../core/archive/keptSet.ts';
import type { By } from './trail.ts';

/** Sets of marks that were kept, whole in themselves. */
export interface Archive {
  /** All or none; sets that are there by their id are passed over. Returns the ids that were added. Each is told in the trail: put by here, or taken in from a file. */
  keep(sets: readonly KeptSet[], by?: By, how?: 'setKept' | 'archiveTakenIn'): Promise<string[]>;
  /** Latest first. */
  sets(): Promise<KeptSetView[]>;
  set(id: string): Promise<KeptSet | null>;
  /** Prints of the music of each part, by set. */
  prints(): Promise<Map<string, string[][]>>;
}
