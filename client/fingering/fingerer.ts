import type { Part } from '../../core/music/part.ts';
import type { FromFingerer, Offers, Question, ToFingerer } from './messages.ts';

export interface Fingerer {
  /** The fingerings of a passage; null when a later question took its place. Rejects when the worker stops. */
  ask(question: Question): Promise<Offers | null>;
  close(): void;
}

/** The fingering engine in a worker of its own, begun with the first question: its weights are never loaded where nobody asks. A new question stops the one before. */
export function fingerer(part: Part): Fingerer {
  let worker: Worker | null = null;
  let job = 0;
  let waiting: { settle(found: Offers | null): void; fail(fault: Error): void } | null = null;

  const begun = (): Worker => {
    if (worker) return worker;
    worker = new Worker(new URL('./finger.worker.ts', import.meta.url), { type: 'module' });
    worker.onmessage = ({ data }: MessageEvent<FromFingerer>) => {
      if (data.job !== job) return;
      if (data.kind === 'found') waiting?.settle(data.found);
      else waiting?.fail(new Error(data.why));
      waiting = null;
    };
    worker.onerror = (event) => {
      waiting?.fail(new Error(event.message));
      waiting = null;
    };
    worker.postMessage({ kind: 'part', part } satisfies ToFingerer);
    return worker;
  };
  const stop = (): void => {
    worker?.terminate();
    worker = null;
    waiting?.settle(null);
    waiting = null;
  };

  return {
    ask: (question) => {
      // A search cannot be interrupted from outside: the worker goes, and the next one takes the new question.
      if (waiting) stop();
      job += 1;
      return new Promise((settle, fail) => {
        waiting = { settle, fail };
        begun().postMessage({ kind: 'ask', job, question } satisfies ToFingerer);
      });
    },
    close: stop,
  };
}
