import { randomUUID } from 'node:crypto';
import type { LogEntry } from '../../core/agreement/event.ts';
import type { NewEdition } from './library.ts';

/** The row of a log that says where measures are since a corrected edition was laid over. */
export function laidOverRow(seq: number, edition: string, measures: number[], { by, at }: Pick<NewEdition, 'by' | 'at'>, byName: string): LogEntry {
  return { seq, operation: randomUUID(), name: 'layOver', input: { edition }, events: [{ type: 'laidOver', measures }], by, byName, at: at.toISOString() };
}
