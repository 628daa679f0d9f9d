import { setPriority } from 'node:os';
import { parentPort } from 'node:worker_threads';
import type { FromWorker, JobName, Jobs, Outcome } from './requests.ts';
import { work } from './work.ts';

// Whoever waits for an answer comes before a document. Only on Linux is this the thread alone and not the whole server.
if (process.platform === 'linux') setPriority(0, 10);

const say = (message: FromWorker): void => parentPort?.postMessage(message);

async function outcome({ name, asked }: { name: JobName; asked: Jobs[JobName]['asked'] }): Promise<Outcome> {
  try {
    return { done: await (work[name] as (asked: unknown, onReached: (step: number) => void) => unknown)(asked, (reached) => say({ reached })) };
  } catch (error) {
    return { failed: error instanceof Error ? (error.stack ?? error.message) : String(error) };
  }
}

parentPort?.on('message', (order: { name: JobName; asked: Jobs[JobName]['asked'] }) => void outcome(order).then(say));
