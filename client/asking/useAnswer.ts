import { useEffect, useMemo, useState } from 'react';
import type { Part } from '../../core/music/part.ts';
import type { Asker } from './asker.ts';

export type AnswerState = 'resting' | 'working' | 'failed' | 'found';

type Answered<Question, Answer> = { question: Question; answer: Answer | null };

/**
 * The answer to a question about a part, worked out beside the page; nothing while there is no question. `engineOf` must not change between renders.
 * `share`: how much of the work is done, 0 to 1.
 */
export function useAnswer<Question, Answer>(part: Part, engineOf: (part: Part) => Asker<Question, Answer>, question: Question | null): { state: AnswerState; share: number; answer: Answer | null } {
  const engine = useMemo(() => engineOf(part), [engineOf, part]);
  useEffect(() => () => engine.close(), [engine]);
  const [answered, setAnswered] = useState<Answered<Question, Answer> | null>(null);
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
