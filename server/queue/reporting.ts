/** So often at most a job's progress is written: people look twice a second. Chosen, not measured. */
const EVERY_MS = 150;

/** Progress of a job on its way to the store: one write at a time, never two within a moment, the last one always. */
export interface Reporting {
  say(progress: unknown): void;
  /** What was said last. */
  last(): unknown;
  /** After this nothing is written any more. */
  close(): Promise<void>;
}

export function createReporting(first: unknown, write: (progress: unknown) => Promise<void>): Reporting {
  let last = first;
  let due: NodeJS.Timeout | undefined;
  let writing = Promise.resolve();
  let writtenAt = 0;
  let closed = false;

  function flush(): void {
    due = undefined;
    writtenAt = performance.now();
    // Progress that cannot be written now is written with the next; the job itself hears of a lost database where it matters.
    writing = writing.then(() => write(last)).catch(() => {});
  }

  return {
    say(progress) {
      if (closed) return;
      last = progress;
      due ??= setTimeout(flush, Math.max(0, EVERY_MS - (performance.now() - writtenAt)));
    },
    last: () => last,
    close() {
      closed = true;
      clearTimeout(due);
      return writing;
    },
  };
}
