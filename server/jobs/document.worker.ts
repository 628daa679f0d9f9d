import { parentPort } from 'node:worker_threads';
import type { FromWorker, JobName, Jobs, Outcome } from './requests.ts';
import { work } from './work.ts';

const say = (message: FromWorker): void => parentPort?.postMessage(message);

async function outcome({ name, asked }: { name: JobName; asked: Jobs[JobName]['asked'] }): Promise<Outcome> {
  try {
    return { done: await (work[name] as (asked: unknown, onReached: (step: number) => void) => unknown)(asked, (reached) => say({ reached })) };
  } catch (error) {
    return { failed: error instanceof Error ? (error.stack ?? error.message) : String(error) };
  }
}

parentPort?.on('message', (order: { name: JobName; asked: Jobs[JobName]['asked'] }) => void outcome(order).then(say));
