import { useMemo, useState } from 'react';
import type { CheckInput } from '../../../core/check/finding.ts';
import type { AgreementState, PartFacts } from '../../../core/agreement/state.ts';
import type { Part } from '../../../core/music/part.ts';
import type { SeatId } from '../../../core/music/seat.ts';
import type { AnswerState } from '../../asking/useAnswer.ts';
import type { Passage } from '../../router.ts';
import type { Planned } from '../../staggering/messages.ts';
import { usePlan } from '../../staggering/usePlan.ts';
import { withDraft } from '../stand/standing.ts';

type Standing = Omit<CheckInput, 'part'>;

export interface SectionPlan {
  state: AnswerState;
  /** How many are there to share the changes. */
  players: number;
  /** The best plan so far, or the last word. */
  planned: Planned | null;
  refusal: string | null;
  absent: readonly SeatId[];
  setAbsent(absent: readonly SeatId[]): void;
  /** What stands, or what would stand with the plan inked in, among those who are there. */
  input: Standing;
}

/** A plan for a passage over what stands in the section. */
export function useSectionPlan(part: Part, passage: Passage | null, standing: Standing, state: AgreementState, facts: PartFacts): SectionPlan {
  const [absent, setAbsent] = useState<readonly SeatId[]>([]);
  const rest = useMemo(() => ({ ...standing, absent }), [standing, absent]);
  const plan = usePlan(part, passage, rest);
  const planned = plan.answer && 'planned' in plan.answer ? plan.answer.planned : null;
  const input = useMemo(
    () => (planned ? { ...standing, seats: standing.seats.filter((seat) => !absent.includes(seat)), marks: withDraft(state, planned.marks, 'all', facts) } : standing),
    [planned, standing, absent, state, facts],
  );
  const refusal = plan.answer && 'refusal' in plan.answer ? plan.answer.refusal : null;
  return { state: plan.state, players: standing.seats.length - absent.length, planned, refusal, absent, setAbsent, input };
}
