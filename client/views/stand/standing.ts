import { inForceWith, type MarkInForce } from '../../../core/agreement/inForce.ts';
import type { AgreementState, PartFacts } from '../../../core/agreement/state.ts';
import type { Mark } from '../../../core/music/mark.ts';
import type { Seats } from '../../../core/music/seat.ts';

/** First and last measure of marks, or null where none of their notes is in the part. */
export function rangeOf(marks: readonly Mark[], facts: PartFacts): { from: number; to: number } | null {
  const measures = marks.flatMap(({ note }) => facts.notes.get(note) ?? []);
  return measures.length ? { from: Math.min(...measures), to: Math.max(...measures) } : null;
}

/** Marks in force as they would be with a pencilled draft inked in. */
export function withDraft(state: AgreementState, draft: readonly Mark[], seats: Seats, facts: PartFacts): MarkInForce[] {
  const known = draft.filter(({ note }) => facts.notes.has(note));
  const measures = known.map(({ note }) => facts.notes.get(note)!);
  return inForceWith(state, known.length ? [{ proposal: 'draft', why: '', seats, marks: known, measures }] : [], facts.seats);
}
