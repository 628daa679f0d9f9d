import type { Due, WaitedFor } from '../../season/late.ts';
import type { LateChange } from '../sinceHandedOut.ts';

/** GET /api/programmes/:programme/overview: how the parts of a programme stand on the library's own day. */
export interface ProgrammeOverview {
  /** ISO day. */
  today: string;
  parts: {
    id: string;
    due: Due | null;
    waitedFor: WaitedFor;
    /** Measures that were changed since the part went onto the stands. */
    changed: number;
  }[];
}

/** GET /api/parts/:part/since: what has changed since the parts were handed out. */
export interface SinceView {
  /** When they were handed out, ISO 8601; null while they are not. */
  at: string | null;
  /** `number`: of the measure as printed; `position`: of the note among those that can carry marks, from 1. */
  changes: (LateChange & { number: string; position: number })[];
}
