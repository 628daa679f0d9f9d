import type { Part } from '../../core/music/part.ts';
import type { FromWorker, ToWorker } from './messages.ts';

/** Answers questions about the part this worker was given, one after another. */
export function answer<Question, Answer>(find: (part: Part, question: Question, onSoFar: (found: Answer) => void) => Answer): void {
  const port = globalThis as unknown as { postMessage(message: FromWorker<Answer>): void; onmessage: ((event: MessageEvent<ToWorker<Question>>) => void) | null };
  let part: Part | null = null;
  port.onmessage = ({ data }) => {
    if (data.kind === 'part') {
      part = data.part;
      return;
    }
    if (!part) return;
    const { job, question } = data;
    try {
      port.postMessage({ kind: 'found', job, found: find(part, question, (soFar) => port.postMessage({ kind: 'soFar', job, found: soFar })) });
    } catch (fault) {
      port.postMessage({ kind: 'failed', job, why: String(fault) });
    }
  };
}
