import type { LogEntry } from './event.ts';
import { evolveAll } from './evolve.ts';
import { emptyState, type AgreementState } from './state.ts';

/**
 * The state a whole log (or the rest after a snapshot) builds. Throws where a row is missing or repeated.
 * Invariant: `replay(log)` equals `replay(log.slice(n), replay(log.slice(0, n)))` for every n.
 * Example: `replay(rows).seq === rows.length`.
 */
export function replay(entries: readonly LogEntry[], from: AgreementState = emptyState()): AgreementState {
  return evolveAll(from, entries);
}

/**
 * What a client makes of rows as they arrive: rows it has are passed over, the next ones are taken, and at the first gap it stops.
 * `gap` is true when rows are missing before the last one given. Rows must be in order of `seq`.
 * Example: with rows 1 and 3 after row 0, `seq` becomes 1 and `gap` is true.
 */
export function take(state: AgreementState, entries: readonly LogEntry[]): { state: AgreementState; taken: LogEntry[]; gap: boolean } {
  const taken: LogEntry[] = [];
  for (const entry of entries) {
    if (entry.seq === state.seq + taken.length + 1) taken.push(entry);
  }
  const last = entries.at(-1)?.seq ?? 0;
  return { state: replay(taken, state), taken, gap: last > state.seq + taken.length };
}
