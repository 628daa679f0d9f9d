import type { RefusedOutcome } from '../../queue/handler.ts';
import { whenThere } from '../../queue/whenEnded.ts';
import { isUnderWay, type Made } from '../../store/jobs.ts';
import type { InHall } from '../deps.ts';
import { trouble, TroubleAnswer } from '../trouble.ts';
import type { CopyNotes } from './printJob.ts';

/** A copy that is there, and its files. */
export interface Copy extends CopyNotes {
  files: Made['files'];
}

/** One copy of a print as soon as it is made, whoever makes it. Throws what the print was refused for. */
export function copyThere(hall: InHall, print: string, place: number, signal: AbortSignal): Promise<Copy> {
  const { jobs } = hall.store;
  const look = async (): Promise<Copy | null> => {
    // The job is read before the copy: what was made just before its end is not missed.
    const job = await jobs.job(print);
    const made = await jobs.made(print, place);
    if (made) return { ...(made.notes as CopyNotes), files: made.files };
    if (job && isUnderWay(job)) return null;
    if (job?.state !== 'refused') throw trouble(409, 'STOPPED', 'The print was stopped. Ask for it again.');
    const { status, trouble: why } = job.outcome as RefusedOutcome;
    throw new TroubleAnswer(status, why);
  };
  return whenThere(hall, print, look, signal);
}
