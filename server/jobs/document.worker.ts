import { parentPort, workerData } from 'node:worker_threads';
import type { JobName, Jobs, Outcome } from './requests.ts';
import { work } from './work.ts';

const { name, asked } = workerData as { name: JobName; asked: Jobs[JobName]['asked'] };

async function outcome(): Promise<Outcome> {
  try {
    return { done: await (work[name] as (asked: unknown) => unknown)(asked) };
  } catch (error) {
    return { failed: error instanceof Error ? (error.stack ?? error.message) : String(error) };
  }
}

parentPort?.postMessage(await outcome());
