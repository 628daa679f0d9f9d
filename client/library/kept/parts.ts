import type { LogEntry } from '../../../core/agreement/event.ts';
import { take } from '../../../core/agreement/replay.ts';
import type { PartView } from '../../../core/agreement/wire/http.ts';
import { askJson, drop, note, recall } from './library.ts';
import { folded, opened, partIn, withRows } from './policy.ts';

const address = (part: string) => `/parts/${part}`;
const rowsOf = (part: string) => `${address(part)}/rows`;
const OPENED = '/opened';
const AHEAD = '/ahead';

/** The part as the library has it, or as it lay here last with every row that came since. */
export async function fetchPart(part: string): Promise<PartView> {
  const { value: view, kept } = await askJson<PartView>(address(part));
  if (kept) return withRows(view, (await recall<LogEntry[]>(rowsOf(part))) ?? []);
  await note<LogEntry[]>(rowsOf(part), (rows) => (rows ?? []).filter(({ seq }) => seq > view.state.seq));
  return view;
}

/** Rows of a part's log as they come, so that it lies here without a line as it lay with one. */
export async function keepRows(part: string, fresh: readonly LogEntry[]): Promise<void> {
  let known: readonly LogEntry[] = [];
  await note<readonly LogEntry[]>(rowsOf(part), (rows = []) => (known = [...rows, ...fresh.filter(({ seq }) => seq > (rows.at(-1)?.seq ?? 0))]));
  if (!folded(known)) return;
  await note<PartView>(address(part), (view) => withRows(view!, known));
  await note<readonly LogEntry[]>(rowsOf(part), (rows = []) => rows.filter(({ seq }) => seq > known.at(-1)!.seq));
}

async function dropOthers(): Promise<void> {
  const wanted = new Set([...((await recall<string[]>(OPENED)) ?? []), ...((await recall<string[]>(AHEAD)) ?? [])]);
  await drop((path) => {
    const part = partIn(path);
    return part !== null && !wanted.has(part);
  });
}

/** A part was opened here: the last ones stay. */
export async function keepOpened(part: string): Promise<void> {
  await note<readonly string[]>(OPENED, (before) => opened(before ?? [], part));
  await dropOthers();
}

/** Parts that are fetched before anybody opens them. */
export async function keepAhead(parts: readonly string[]): Promise<void> {
  await note<readonly string[]>(AHEAD, () => parts);
  await dropOthers();
}

/** True when the part lies here as far as `head`. */
export async function liesHere(part: string, head: number): Promise<boolean> {
  const view = await recall<PartView>(address(part));
  if (!view) return false;
  return take(view.state, (await recall<LogEntry[]>(rowsOf(part))) ?? []).state.seq >= head;
}
