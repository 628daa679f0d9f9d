import type { Part } from '../../core/music/part.ts';
import type { FromWorker, ToWorker } from './messages.ts';

export interface Asker<Question, Answer> {
  /** The answer, and before it those that stand until a better one comes; null when a later question took its place, or nobody waits any more. Rejects when the worker stops. */
  ask(question: Question, onSoFar?: (found: Answer) => void): Promise<Answer | null>;
  /** Nobody waits for the answer any more. */
  drop(): void;
  close(): void;
}

/** Questions about one part to a worker of its own, begun with the first: what it needs is never loaded where nobody asks. A new question stops the one before. */
export function asker<Question, Answer>(part: Part, begin: () => Worker): Asker<Question, Answer> {
  let worker: Worker | null = null;
  let job = 0;
  let waiting: { settle(found: Answer | null): void; fail(fault: Error): void; onSoFar?: (found: Answer) => void } | null = null;

  const post = (message: ToWorker<Question>) => worker?.postMessage(message);
  const begun = (): void => {
    if (worker) return;
    worker = begin();
    worker.onmessage = ({ data }: MessageEvent<FromWorker<Answer>>) => {
      if (data.job !== job) return;
      if (data.kind === 'soFar') return waiting?.onSoFar?.(data.found);
      if (data.kind === 'found') waiting?.settle(data.found);
      else waiting?.fail(new Error(data.why));
      waiting = null;
    };
    worker.onerror = (event) => {
      const asked = waiting;
      waiting = null;
      // It may never have loaded: the next question begins another one.
      stop();
      asked?.fail(new Error(event.message));
    };
    post({ kind: 'part', part });
  };
  const stop = (): void => {
    worker?.terminate();
    worker = null;
    waiting?.settle(null);
    waiting = null;
  };
  // A search cannot be interrupted from outside: the worker goes, and the next one takes the new question.
  const drop = (): void => {
    if (waiting) stop();
  };

  return {
    ask: (question, onSoFar) => {
      drop();
      job += 1;
      return new Promise((settle, fail) => {
        waiting = { settle, fail, ...(onSoFar ? { onSoFar } : {}) };
        begun();
        post({ kind: 'ask', job, question });
      });
    },
    drop,
    close: stop,
  };
}
