import { createRequire } from 'node:module';
import { pathToFileURL } from 'node:url';
import { Worker } from 'node:worker_threads';

// A worker does not inherit the loader of its parent, so it starts with a line that brings one.
const loader = new URL('index.mjs', pathToFileURL(createRequire(import.meta.url).resolve('tsx/esm/api'))).href;
const script = new URL('./document.worker.ts', import.meta.url).href;
const start = new URL(`data:text/javascript,${encodeURIComponent(`import { tsImport } from '${loader}'; await tsImport('${script}', '${script}');`)}`);

/** Workers that wait for their next job: most of a short one's time goes into beginning. */
export interface RestingWorkers {
  /** A worker at rest, or a new one. */
  take(): Worker;
  /** Back after a job that came to its end. */
  giveBack(worker: Worker): void;
}

/**
 * Keeps one worker for so many milliseconds after its last job; with 0 none. It does not hold the process up.
 * @param heapMegabytes room of each worker
 */
export function createRestingWorkers(heapMegabytes: number, restMs: number): RestingWorkers {
  let resting: { worker: Worker; timer: NodeJS.Timeout; gone: () => void } | null = null;

  function rise(): Worker | null {
    if (!resting) return null;
    const { worker, timer, gone } = resting;
    resting = null;
    clearTimeout(timer);
    worker.off('exit', gone).off('error', gone);
    worker.ref();
    return worker;
  }

  return {
    take: () => rise() ?? new Worker(start, { execArgv: [], resourceLimits: { maxOldGenerationSizeMb: heapMegabytes, stackSizeMb: 4 } }),
    giveBack(worker) {
      if (restMs === 0 || resting) return void worker.terminate();
      const gone = () => {
        if (resting?.worker === worker) rise();
      };
      worker.once('exit', gone).once('error', gone);
      worker.unref();
      resting = { worker, gone, timer: setTimeout(() => void rise()?.terminate(), restMs).unref() };
    },
  };
}
