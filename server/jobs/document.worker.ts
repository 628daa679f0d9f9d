import { parentPort, workerData } from 'node:worker_threads';
import type { FromWorker, JobName, Jobs, Outcome } from './requests.ts';
import { work } from './work.ts';

const say = (message: FromWorker): void => parentPort?.postMessage(message);
const { name, asked } = workerData as { name: JobName; asked: Jobs[JobName]['asked'] };

async function outcome(): Promise<Outcome> {
  try {
    return { done: await (work[name] as (asked: unknown, onReached: (step: number) => void) => unknown)(asked, (reached) => say({ reached })) };
  } catch (error) {
    return { failed: error instanceof Error ? (error.stack ?? error.message) : String(error) };
  }
}

say(await outcome());
