import type { Part } from '../../core/music/part.ts';
import type { FromFingerer, ToFingerer } from './messages.ts';
import { offersFor } from './offersFor.ts';

const port = globalThis as unknown as { postMessage(message: FromFingerer): void; onmessage: ((event: MessageEvent<ToFingerer>) => void) | null };

let part: Part | null = null;

port.onmessage = ({ data }) => {
  if (data.kind === 'part') {
    part = data.part;
    return;
  }
  if (!part) return;
  try {
    port.postMessage({ kind: 'found', job: data.job, found: offersFor(part, data.question) });
  } catch (fault) {
    port.postMessage({ kind: 'failed', job: data.job, why: String(fault) });
  }
};
