import type { LogEntry } from '../../core/agreement/event.ts';

export type EntryRow = Omit<LogEntry, 'at'> & { at: Date };

export const entryOf = (row: EntryRow): LogEntry => ({ seq: row.seq, operation: row.operation, name: row.name, input: row.input, events: row.events, by: row.by, byName: row.byName, at: row.at.toISOString() });
