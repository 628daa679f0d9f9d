import type { Revision } from '../../../core/agreement/revisions.ts';
import { words } from '../../words/words.ts';

/** A state that can be compared: the part as it came, or as it stood after a row of the log. */
export interface PartState {
  seq: number;
  revision: Revision | null;
}

/** Every state, the part as it came first. Of several revisions of one row the first is told. */
export function statesOf(revisions: readonly Revision[]): PartState[] {
  const seen = new Set<number>();
  const told = revisions.filter(({ seq }) => !seen.has(seq) && seen.add(seq));
  return [{ seq: 0, revision: null }, ...told.map((revision) => ({ seq: revision.seq, revision }))];
}

/** The two states that are compared: those asked for where they are there, else the last change of ink and what was before it. */
export function compared(states: readonly PartState[], asked: { from: number; to: number } | null): { from: number; to: number } {
  const has = (seq: number): boolean => states.some((state) => state.seq === seq);
  if (asked && has(asked.from) && has(asked.to)) return asked;
  const last = states.findLastIndex(({ revision }) => revision !== null && (revision.kind === 'inked' || revision.kind === 'restored'));
  return { from: states[Math.max(0, last - 1)]?.seq ?? 0, to: states[Math.max(0, last)]?.seq ?? 0 };
}

/** The state `by` steps from one of them, which stays where there is no further one. */
export function stepped(states: readonly PartState[], seq: number, by: 1 | -1): number {
  return states[states.findIndex((state) => state.seq === seq) + by]?.seq ?? seq;
}

/** Measures named one by one before the rest is counted. Chosen, not measured. */
const NAMED = 6;

/** What a state is called: its day, who, and what was done. `number`: printed number of a measure. */
export function stateName({ revision }: PartState, number: (ordinal: number) => string): string {
  if (!revision) return words.revisions.first;
  const { at, name, kind, measures, stage } = revision;
  const what = stage ? words.stages[stage] : words.revisions.kinds[kind];
  const where = measures.length ? `, ${words.revisions.in(measures.slice(0, NAMED).map(number).join(', '), Math.max(0, measures.length - NAMED))}` : '';
  return `${words.day(at)}, ${name}: ${what}${where}`;
}
