import type { LogEntry } from '../../../core/agreement/event.ts';
import { take } from '../../../core/agreement/replay.ts';
import { sectionsOf } from '../../../core/agreement/seating.ts';
import type { PartView, Shelf } from '../../../core/agreement/wire/http.ts';

/** Parts that stay after they were opened. */
const OPENED_KEPT = 12;
/** Parts of a programme that are fetched ahead. Chosen, not measured: some tens of megabytes at most. */
const AHEAD_KEPT = 12;
/** Rows are laid into the kept part when there are more. Chosen, not measured. */
const ROWS_KEPT = 300;

/** The parts opened last, newest first. */
export const opened = (before: readonly string[], part: string): readonly string[] => [part, ...before.filter((other) => other !== part)].slice(0, OPENED_KEPT);

export const folded = (rows: readonly LogEntry[]): boolean => rows.length > ROWS_KEPT;

/** A part with the rows that came after it was fetched; it stops where one is missing. */
export function withRows(view: PartView, rows: readonly LogEntry[]): PartView {
  const { state } = take(view.state, rows);
  return { ...view, state, head: Math.max(view.head, state.seq) };
}

/** The part a kept answer is about; null for answers that are about none. */
export const partIn = (path: string): string | null => /^\/parts\/([^/]+)/.exec(path)?.[1] ?? null;

/** Parts of the programme that a person will want: those of the sections they sit in there first of all, then the other string parts of the work in hand. */
export function wantedAhead({ programmes, sections }: Pick<Shelf, 'programmes' | 'sections'>, work: string, person: string): { id: string; head: number }[] {
  const programme = programmes.find(({ works: all }) => all.some(({ id }) => id === work));
  const works = programme?.works ?? [];
  const sitsIn = sectionsOf(sections, programme?.seatings ?? [], person);
  const mine = works.flatMap(({ parts }) => parts.filter(({ section }) => section && sitsIn.includes(section.id)));
  const beside = works.filter(({ id }) => id === work).flatMap(({ parts }) => parts.filter(({ instrument }) => instrument !== null));
  return [...new Map([...mine, ...beside].map(({ id, head }) => [id, { id, head }])).values()].slice(0, AHEAD_KEPT);
}
