import type { LogEntry } from './event.ts';

/**
 * For each row the measures of the editions laid over after it, in order: applied one after another with `measureNow` they lead an ordinal of that row to where it is now.
 * Example: of a log whose last row lays an edition over, every row but the last has one list.
 */
export function laidOverAfter(entries: readonly LogEntry[]): (readonly number[])[][] {
  let later: (readonly number[])[] = [];
  const after: (readonly number[])[][] = [];
  for (let index = entries.length - 1; index >= 0; index -= 1) {
    after[index] = later;
    const laid = entries[index]!.events.flatMap((event) => (event.type === 'laidOver' ? [event.measures] : []));
    if (laid.length) later = [...laid, ...later];
  }
  return after;
}
