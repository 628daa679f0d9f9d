import type { Severity } from '../../check/finding.ts';
import type { Seats } from '../../music/seat.ts';
import type { Trouble } from './http.ts';

/** How far a look through a piece has come. */
export interface PieceProgress {
  /** Parts read, of all there are. */
  done: number;
  of: number;
  /** Name of the part being read; null while it waits for its turn. */
  reading: string | null;
  /** I am among those who asked for it. */
  mine: boolean;
}

/** What was found in one part: how many of each severity are to be watched, and how many are put to rest. */
export interface PartTally {
  id: string;
  name: string;
  counts: Record<Severity, number>;
  rested: number;
}

/** GET, POST and DELETE /api/works/:work/check */
export interface PieceCheck {
  running: PieceProgress | null;
  /** The last one that came to its end; parts in score order. `before`: names of parts that were changed after it was begun. */
  found: { at: string; parts: PartTally[]; before: string[] } | null;
  /** Why the last one did not come to its end. */
  trouble: Trouble | null;
}

/** One finding of GET /api/works/:work/check/parts/:part, which answers them worst first. */
export interface PieceFinding {
  rule: string;
  text: string;
  severity: Severity;
  /** Ordinal of the measure, and how it is called. */
  measure: number;
  where: string;
  seats: Seats;
  /** Who put it to rest and why; null while it is to be watched. */
  rested: { by: string; reason: string } | null;
}
