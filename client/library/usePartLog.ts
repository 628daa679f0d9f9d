import { useCallback, useRef } from 'react';
import type { LogEntry } from '../../core/agreement/event.ts';
import type { LogView } from '../../core/agreement/wire/http.ts';
import { keptJson } from './kept/library.ts';
import { useLoaded, type Loaded } from './useLoaded.ts';

/** The rows of a log after those that are known, fetched until it is whole. */
export async function restOfLog(known: readonly LogEntry[], fetchAfter: (after: number) => Promise<LogView>): Promise<LogEntry[]> {
  const entries = [...known];
  for (;;) {
    const { head, entries: more } = await fetchAfter(entries.at(-1)?.seq ?? 0);
    entries.push(...more);
    if (more.length === 0 || entries.at(-1)!.seq >= head) return entries;
  }
}

/** The part's whole log as far as the library has it; fetched anew, from where it is known, when `head` moves on. */
export function usePartLog(part: string, head: number): Loaded<LogEntry[]> {
  const known = useRef<{ part: string; entries: LogEntry[] }>({ part, entries: [] });
  const fetchIt = useCallback(async () => {
    const before = known.current.part === part ? known.current.entries : [];
    const entries = await restOfLog(before, (after) => keptJson<LogView>(`/parts/${part}/log?after=${after}`));
    known.current = { part, entries };
    return entries;
  }, [part]);
  return useLoaded(`${part} ${head}`, fetchIt);
}
