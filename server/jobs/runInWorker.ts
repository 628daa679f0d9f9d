import { availableParallelism } from 'node:os';
import { type RestingWorkers, createRestingWorkers } from './restingWorkers.ts';
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

/** A worker of imports or prints rests so long before it goes: a folder full of scores comes in one after another, and a work goes out in a copy for every desk. Chosen, not measured. */
const REST_MS = 20_000;

interface Door {
  turnstile: Turnstile;
  workers: RestingWorkers;
}

// Each job may fill the heap allowed to it, so no more run at once than the machine has processors for.
const documents: Door = { turnstile: new Turnstile(Math.max(1, availableParallelism() - 1)), workers: createRestingWorkers(HEAP_MEGABYTES, 0) };
// A look through a whole piece is long and nobody's page waits for it: it goes through a door of its own, so that no score and no part stands behind it.
const pieces: Door = { turnstile: new Turnstile(1), workers: createRestingWorkers(HEAP_MEGABYTES, 0) };
// So is printing: a whole work's parts come one after another, and the engraver takes longer to begin than a short part to print.
const prints: Door = { turnstile: new Turnstile(1), workers: createRestingWorkers(HEAP_MEGABYTES, REST_MS) };
// Nor does a symphony that comes in stand before a part that somebody opens.
const imports: Door = { turnstile: new Turnstile(1), workers: createRestingWorkers(HEAP_MEGABYTES, REST_MS) };
const DOORS: Partial<Record<JobName, Door>> = { checkPiece: pieces, printPart: prints, importScore: imports, realign: imports };

/** So many imports, prints and looks through a piece at once instead of one of each: for a process on a machine with room for their heaps. Called once. */
export function allowAtOnce(jobs: number): void {
  for (const { turnstile } of [pieces, prints, imports]) turnstile.widen(jobs - 1);
}

/**
 * Runs one job in a worker thread of its own, so that nothing that is read can stop the server: the thread has its own heap and a time limit.
 * Rejects with Exhausted when it uses up either, with the signal's reason when aborted, and with the worker's own fault when it has a bug.
 */
export function runInWorker<Name extends JobName>(name: Name, asked: Jobs[Name]['asked'], options: RunOptions = {}): Promise<Jobs[Name]['answer']> {
  const { turnstile, workers } = DOORS[name] ?? documents;
  return turnstile.pass(() => run(options.heapMegabytes === undefined ? workers : createRestingWorkers(options.heapMegabytes, 0), name, asked, options));
}

function run<Name extends JobName>(workers: RestingWorkers, name: Name, asked: Jobs[Name]['asked'], { signal, timeLimitMs = TIME_LIMIT_MS, onReached }: RunOptions): Promise<Jobs[Name]['answer']> {
  return new Promise((resolve, reject) => {
    if (signal?.aborted) return reject(signal.reason as Error);
    const worker = workers.take();
    const timer = setTimeout(() => settle(() => reject(new Exhausted('time'))), timeLimitMs);
    const abort = () => settle(() => reject(signal?.reason as Error));
    let settled = false;
    function settle(how: () => void, isWhole = false): void {
      if (settled) return;
      settled = true;
      clearTimeout(timer);
      signal?.removeEventListener('abort', abort);
      worker.off('message', heard).off('exit', ended);
      if (isWhole) {
        worker.off('error', broke);
        workers.giveBack(worker);
      } else void worker.terminate();
      how();
    }
    function heard(message: FromWorker): void {
      if ('reached' in message) return onReached?.(message.reached);
      settle(() => ('done' in message ? resolve(message.done as Jobs[Name]['answer']) : reject(new Error(`Work "${name}" failed: ${message.failed}`))), 'done' in message);
    }
    const broke = (error: NodeJS.ErrnoException) => settle(() => reject(error.code === 'ERR_WORKER_OUT_OF_MEMORY' ? new Exhausted('memory') : error));
    const ended = () => settle(() => reject(new Error(`The worker for "${name}" ended without an answer.`)));
    signal?.addEventListener('abort', abort, { once: true });
    worker.on('message', heard).on('error', broke).on('exit', ended);
    worker.postMessage({ name, asked });
  });
}
