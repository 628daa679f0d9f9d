import { availableParallelism } from 'node:os';
import { pathToFileURL } from 'node:url';
import { createRequire } from 'node:module';
import { Worker } from 'node:worker_threads';
import type { FromWorker, JobName, Jobs } from './requests.ts';
import { Turnstile } from './turnstile.ts';

/** Room and time for one job. The largest movement we know needs a third of either. Chosen after measuring. */
const HEAP_MEGABYTES = 1_536;
const TIME_LIMIT_MS = 60_000;

export interface RunOptions {
  signal?: AbortSignal;
  timeLimitMs?: number;
  heapMegabytes?: number;
  /** Hears how far a long job has come. */
  onReached?: (step: number) => void;
}

/** A job that used up its room or time. */
export class Exhausted extends Error {}

// Each job may fill the heap allowed to it, so no more run at once than the machine has processors for.
const documents = new Turnstile(Math.max(1, availableParallelism() - 1));
// A look through a whole piece is long and nobody's page waits for it: it goes through a door of its own, so that no score and no part stands behind it.
const pieces = new Turnstile(1);
// Nor does a symphony that comes in stand before a part that somebody opens.
const imports = new Turnstile(1);
const DOORS: Partial<Record<JobName, Turnstile>> = { checkPiece: pieces, importScore: imports, realign: imports };
// A worker does not inherit the loader of its parent, so it starts with a line that brings one.
const loader = new URL('index.mjs', pathToFileURL(createRequire(import.meta.url).resolve('tsx/esm/api'))).href;
const script = new URL('./document.worker.ts', import.meta.url).href;
const start = new URL(`data:text/javascript,${encodeURIComponent(`import { tsImport } from '${loader}'; await tsImport('${script}', '${script}');`)}`);

/**
 * Runs one job in a worker thread of its own, so that nothing that is read can stop the server: the thread has its own heap and a time limit.
 * Rejects with Exhausted when it uses up either, with the signal's reason when aborted, and with the worker's own fault when it has a bug.
 */
export function runInWorker<Name extends JobName>(name: Name, asked: Jobs[Name]['asked'], options: RunOptions = {}): Promise<Jobs[Name]['answer']> {
  return (DOORS[name] ?? documents).pass(() => run(name, asked, options));
}

function run<Name extends JobName>(name: Name, asked: Jobs[Name]['asked'], { signal, timeLimitMs = TIME_LIMIT_MS, heapMegabytes = HEAP_MEGABYTES, onReached }: RunOptions): Promise<Jobs[Name]['answer']> {
  return new Promise((resolve, reject) => {
    if (signal?.aborted) return reject(signal.reason as Error);
    const worker = new Worker(start, {
      workerData: { name, asked },
      execArgv: [],
      resourceLimits: { maxOldGenerationSizeMb: heapMegabytes, stackSizeMb: 4 },
    });
    const timer = setTimeout(() => settle(() => reject(new Exhausted('time'))), timeLimitMs);
    const abort = () => settle(() => reject(signal?.reason as Error));
    let settled = false;
    function settle(how: () => void): void {
      if (settled) return;
      settled = true;
      clearTimeout(timer);
      signal?.removeEventListener('abort', abort);
      void worker.terminate();
      how();
    }
    signal?.addEventListener('abort', abort, { once: true });
    worker.on('message', (message: FromWorker) => {
      if ('reached' in message) return settled ? undefined : onReached?.(message.reached);
      settle(() => ('done' in message ? resolve(message.done as Jobs[Name]['answer']) : reject(new Error(`Work "${name}" failed: ${message.failed}`))));
    });
    worker.once('error', (error: NodeJS.ErrnoException) => settle(() => reject(error.code === 'ERR_WORKER_OUT_OF_MEMORY' ? new Exhausted('memory') : error)));
    worker.once('exit', () => settle(() => reject(new Error(`The worker for "${name}" ended without an answer.`))));
  });
}
