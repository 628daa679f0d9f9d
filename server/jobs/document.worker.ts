import { setPriority } from 'node:os';
import { parentPort } from 'node:worker_threads';
import type { FromWorker, JobName, Jobs, Outcome } from './requests.ts';
import { work } from './work.ts';

/** Jobs nobody's page waits for: they stand behind whoever turns a page or votes. Chosen, not measured. */
const BEHIND: readonly JobName[] = ['importScore', 'realign', 'checkPiece', 'printPart'];
const LOW = 10;

/** On Linux this is for the thread alone; elsewhere it would be for the whole server. */
function stepBack(): void {
  if (process.platform !== 'linux') return;
  try {
    setPriority(0, LOW);
  } catch {
    // The house may run us lower already.
  }
}

const say = (message: FromWorker): void => parentPort?.postMessage(message);

async function outcome({ name, asked }: { name: JobName; asked: Jobs[JobName]['asked'] }): Promise<Outcome> {
  if (BEHIND.includes(name)) stepBack();
  try {
    return { done: await (work[name] as (asked: unknown, onReached: (step: number) => void) => unknown)(asked, (reached) => say({ reached })) };
  } catch (error) {
    return { failed: error instanceof Error ? (error.stack ?? error.message) : String(error) };
  }
}

parentPort?.on('message', (order: { name: JobName; asked: Jobs[JobName]['asked'] }) => void outcome(order).then(say));
