import { useMemo } from 'react';
import type { Part } from '../../core/music/part.ts';
import { useAnswer, type AnswerState } from '../asking/useAnswer.ts';
import type { Passage } from '../router.ts';
import type { PlanAnswer, PlanQuestion } from './messages.ts';
import { planner } from './planner.ts';

/** A plan for the passage asked about; worked out anew when who plays, or what stands, changes. */
export function usePlan(part: Part, asked: Passage | null, rest: Omit<PlanQuestion, 'first' | 'last'>): { state: AnswerState; answer: PlanAnswer | null } {
  const [first, last] = [asked?.first ?? null, asked?.last ?? null];
  const question = useMemo(() => (first === null || last === null ? null : { ...rest, first, last }), [rest, first, last]);
  return useAnswer(part, planner, question);
}
