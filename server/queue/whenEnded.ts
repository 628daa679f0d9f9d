import type { InHall } from '../http/deps.ts';
import { notFound } from '../http/trouble.ts';
import { isUnderWay, type Job } from '../store/jobs.ts';

/** Looked for so often where no news comes. Chosen, not measured. */
const LOOK_MS = 1_000;

/**
 * What `look` finds, as soon as there is news of a job or now and then: news may be lost, and comes from another process.
 * Rejects with the signal's reason.
 */
export async function whenThere<Found>({ queue }: Pick<InHall, 'queue'>, job: string, look: () => Promise<Found | null>, signal?: AbortSignal): Promise<Found> {
  let news = true;
  let wake = (): void => {};
  const stir = (): void => {
    news = true;
    wake();
  };
  const unlisten = queue.listen((heard) => (heard.what === 'job' && heard.job === job ? stir() : undefined));
  const timer = setInterval(stir, LOOK_MS);
  signal?.addEventListener('abort', stir);
  try {
    for (;;) {
      signal?.throwIfAborted();
      if (news) {
        news = false;
        const found = await look();
        if (found !== null) return found;
      } else await new Promise<void>((resolve) => (wake = resolve));
    }
  } finally {
    unlisten();
    clearInterval(timer);
    signal?.removeEventListener('abort', stir);
  }
}

/** A job when it has ended. */
export function whenEnded(hall: InHall, id: string, signal?: AbortSignal): Promise<Job> {
  const look = async (): Promise<Job | null> => {
    const job = await hall.store.jobs.job(id);
    if (!job) throw notFound('job');
    return isUnderWay(job) ? null : job;
  };
  return whenThere(hall, id, look, signal);
}
