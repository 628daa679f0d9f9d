import { StoppedWhileStarting, type Closing } from './closing.ts';
import { Unstartable } from './database/unstartable.ts';
import type { Daybook } from './watch/daybook.ts';

export interface Program {
  /** As it is called in the daybook. */
  name: string;
  closing: Closing;
  log: Daybook['log'];
  start(): Promise<void>;
  /** It was told to end; what was started is stopped next. */
  leaving(): void;
  /** Everything is stopped in order. */
  gone(): void;
  /** Milliseconds after which it ends whatever is still under way. */
  longestStop: number;
}

/** Runs until it is told to end (SIGINT, SIGTERM, SIGHUP), and ends in order, also when it was still starting. */
export function runProgram({ name, closing, log, start, leaving, gone, longestStop }: Program): void {
  let stopping: Promise<void> | undefined;

  async function stop(started: Promise<void>): Promise<void> {
    setTimeout(() => process.exit(1), longestStop).unref();
    leaving();
    closing.ask();
    await started;
    try {
      await closing.close();
      gone();
    } catch (reason) {
      log(`${name} did not stop in order.`, reason);
      process.exitCode = 1;
    }
    process.exit();
  }

  const started: Promise<void> = Promise.resolve().then(start).catch((reason: unknown) => {
    if (reason instanceof StoppedWhileStarting) return;
    if (reason instanceof Unstartable) console.error(reason.message);
    else log(`${name} did not start.`, reason);
    process.exitCode = 1;
    stopping ??= stop(Promise.resolve());
  });
  // Asked again meanwhile (a terminal and npm both pass Ctrl-C on), it goes on stopping.
  for (const signal of ['SIGINT', 'SIGTERM', 'SIGHUP'] as const) process.on(signal, () => (stopping ??= stop(started)));
}
