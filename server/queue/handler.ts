import type { InHall } from '../http/deps.ts';
import type { Ending, Job } from '../store/jobs.ts';

/** One job in the hands of a worker. */
export interface Doing {
  /** The ensemble it is for. */
  hall: InHall;
  job: Job;
  /** Names this beginning of it: what is written under another name changes nothing. */
  turn: string;
  /** Ends when it is stopped, taken up elsewhere, or the process goes. */
  signal: AbortSignal;
  /** Tells how far it is; of much that is told at once only the last is written. */
  report(progress: unknown): void;
  /** Hears how an effect is written together with the job's end. */
  ending<Result>(outcome: (result: Result) => unknown): Ending<Result>;
}

/** What became of a job: what it came to, or that its end was written with its effect. */
export type Became = { state: 'done' | 'refused'; outcome: unknown } | 'written';

export type Handler = (doing: Doing) => Promise<Became>;

/** Why something was refused, as a job's outcome. */
export interface RefusedOutcome {
  status: number;
  trouble: { code: string; text: string; incident?: string };
}
