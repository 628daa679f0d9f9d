import { useEffect, useMemo, useState } from 'react';
import type { Part } from '../../core/music/part.ts';
import type { Passage } from '../router.ts';
import type { PlanAnswer, PlanQuestion } from './messages.ts';
import { planner } from './planner.ts';

export type PlanState = 'resting' | 'working' | 'failed' | 'found';

type Answered = { question: PlanQuestion; answer: PlanAnswer | null };

/** A plan for the passage asked about, worked out beside the page; worked out anew when who plays, or what stands, changes. */
export function usePlan(part: Part, asked: Passage | null, rest: Omit<PlanQuestion, 'first' | 'last'>): { state: PlanState; share: number; answer: PlanAnswer | null } {
  const engine = useMemo(() => planner(part), [part]);
  useEffect(() => () => engine.close(), [engine]);
  const [first, last] = [asked?.first ?? null, asked?.last ?? null];
  const question = useMemo(() => (first === null || last === null ? null : { ...rest, first, last }), [rest, first, last]);
  const [answered, setAnswered] = useState<Answered | null>(null);
  const [share, setShare] = useState(0);

  useEffect(() => {
    if (!question) return;
    let current = true;
    engine.ask(question, (done) => current && setShare(done)).then(
      (answer) => current && answer && setAnswered({ question, answer }),
      () => current && setAnswered({ question, answer: null }),
    );
    return () => {
      current = false;
      setShare(0);
      engine.drop();
    };
  }, [engine, question]);

  const here = question && answered?.question === question ? answered : null;
  const state = !question ? 'resting' : !here ? 'working' : here.answer ? 'found' : 'failed';
  return { state, share, answer: here?.answer ?? null };
}
