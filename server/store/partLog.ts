import type { LogEntry } from '../../core/agreement/event.ts';
import type { Actor } from '../../core/agreement/people.ts';
import type { Refusal } from '../../core/agreement/refusal.ts';
import type { AgreementState, Stage } from '../../core/agreement/state.ts';
import type { SeatId } from '../../core/music/seat.ts';

/** Who asks. `session` null is the server itself acting for a person (filling the demo). */
export interface Asker {
  person: string;
  session: string | null;
}

/** What is true while the part's row is locked. */
export interface Ground {
  seats: SeatId[];
  /** By `askerKey`, as of this moment; an asker who is no longer signed in is absent. */
  actors: Map<string, Actor>;
  /** Operations of this batch that were answered before. */
  known: Map<string, KnownEntry | RefusedOperation>;
}

/** A row of some part's log. */
export interface KnownEntry {
  part: string;
  entry: LogEntry;
}

export interface RefusedOperation {
  operation: string;
  part: string;
  name: string;
  by: string;
  at: string;
  refusal: Refusal;
}

/** What a batch comes to: rows for the log from head + 1, refusals to remember, and what the shelf shows of the part. */
export interface Ruling {
  entries: LogEntry[];
  refused: RefusedOperation[];
  shelf: { stage: Stage; locked: boolean; open: number };
  snapshot: AgreementState | null;
}

export interface Place {
  head: number;
  revision: number;
  /** Rises when a name was taken out of the log: what was read before is read anew. */
  rewritten?: number;
}

/** Ask again after loading: another process added to the log, or the music was corrected. */
export const MOVED = 'moved';

/** A row of some log with the names of what it is in. */
export interface OwnRow extends Pick<LogEntry, 'operation' | 'name' | 'input' | 'at'> {
  work: string;
  part: string;
}

export interface PartLog {
  /**
   * One transaction: locks the part, reads who the askers are now, lets `decide` rule, writes the ruling. When it returns the
   * ruling is on disk. `decide` must be pure: it may be asked first on what was last read, and again when that does not hold any more. `MOVED` when the part is not where `expected` says; null when there is no such part.
   */
  commit<R extends Ruling>(part: string, expected: Place, askers: Asker[], operations: string[], decide: (ground: Ground) => R): Promise<R | typeof MOVED | null>;
  /** Rows after `after`, at most `limit`, in order; head is the whole log's. null when there is no such part. */
  entries(part: string, after: number, limit: number): Promise<{ head: number; entries: LogEntry[] } | null>;
  /** What somebody wrote, in the order in which they wrote it: for their own eyes. */
  rowsBy(person: string): Promise<OwnRow[]>;
  heads(parts: string[]): Promise<Map<string, number>>;
  /** Where the part is now; null when there is no such part. */
  place(part: string): Promise<Place | null>;
  /** The latest snapshot written under this protocol number. */
  snapshot(part: string, protocol: number): Promise<AgreementState | null>;
}

export const askerKey = ({ person, session }: Asker): string => `${person} ${session ?? ''}`;
export const isRefused = (known: KnownEntry | RefusedOperation): known is RefusedOperation => 'refusal' in known;
