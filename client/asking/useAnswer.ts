import { useEffect, useMemo, useState } from 'react';
import type { Part } from '../../core/music/part.ts';
import type { Asker } from './asker.ts';

export type AnswerState = 'resting' | 'working' | 'failed' | 'found';

type Answered<Question, Answer> = { question: Question; answer: Answer | null; last: boolean };

/**
 * The answer to a question about a part, worked out beside the page; nothing while there is no question. `engineOf` must not change between renders.
 * While it is being worked out, the answer is the best so far.
 */
export function useAnswer<Question, Answer>(part: Part, engineOf: (part: Part) => Asker<Question, Answer>, question: Question | null): { state: AnswerState; answer: Answer | null } {
  const engine = useMemo(() => engineOf(part), [engineOf, part]);
  useEffect(() => () => engine.close(), [engine]);
  const [answered, setAnswered] = useState<Answered<Question, Answer> | null>(null);

  useEffect(() => {
    if (!question) return;
    let current = true;
    engine.ask(question, (answer) => current && setAnswered({ question, answer, last: false })).then(
      (answer) => current && answer && setAnswered({ question, answer, last: true }),
      () => current && setAnswered({ question, answer: null, last: true }),
    );
    return () => {
      current = false;
      engine.drop();
    };
  }, [engine, question]);

  const here = question && answered?.question === question ? answered : null;
  const state = !question ? 'resting' : !here?.last ? 'working' : here.answer ? 'found' : 'failed';
  return { state, answer: here?.answer ?? null };
}
