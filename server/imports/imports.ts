import type { ImportAnswer, Trouble } from '../../core/agreement/wire/http.ts';
import type { ImportView } from '../../core/agreement/wire/imports.ts';
import type { InHall } from '../http/deps.ts';
import type { RefusedOutcome } from '../queue/handler.ts';
import { whenEnded } from '../queue/whenEnded.ts';
import { type Job, KEPT_HOURS, type Upload } from '../store/jobs.ts';
import type { ImportOutcome } from './importJob.ts';
import { type ImportOrder, type ImportProgress, notBegun } from './importOrder.ts';

/** Imports that are told of, the latest. Chosen, not measured. */
const TOLD = 300;

export interface Asked {
  kind: ImportOrder['kind'];
  /** The programme of a new work, else the work. */
  target: string;
  files: readonly Upload[];
  by: string;
}

export type Outcome = { ok: true; answer: ImportAnswer } | { ok: false; status: number; trouble: Trouble };

const STOPPED: Trouble = { code: 'STOPPED', text: 'The import was stopped, and nothing of it was kept.' };

/** Scores come in one after another in the background, each with its progress, so that a season's worth never takes more room than one work. */
export interface Imports {
  /** Sets an import behind those that wait. */
  ask(hall: InHall, asked: Asked): Promise<ImportView>;
  /** Waits for its end, and forgets it then. */
  outcome(hall: InHall, id: string): Promise<Outcome>;
  /** Those under way and those of the last day, in the order they came. */
  views(hall: InHall): Promise<ImportView[]>;
  view(hall: InHall, id: string): Promise<ImportView | null>;
  /** Stops an import that is under way, or forgets one that has ended. False where there is none. */
  leave(hall: InHall, id: string): Promise<boolean>;
}

export function createImports(): Imports {
  /** What imports came to, as it was when it was first asked for; the oldest go. */
  const answers = new Map<string, ImportAnswer>();

  async function answerOf(hall: InHall, job: Job): Promise<ImportAnswer> {
    const known = answers.get(job.id);
    if (known) return known;
    const { work, notes } = job.outcome as ImportOutcome;
    const answer = { work: (await hall.store.library.work(work))!, notes };
    answers.set(job.id, answer);
    if (answers.size > TOLD) answers.delete(answers.keys().next().value!);
    return answer;
  }

  async function viewOf(hall: InHall, job: Job): Promise<ImportView> {
    const { kind } = job.order as ImportOrder;
    const { id, state } = job;
    const progress = job.progress as ImportProgress;
    const view = { id, kind, programme: kind === 'work' ? job.target : null, work: kind === 'work' ? null : job.target, answer: null, trouble: null, at: job.at.toISOString(), ...progress };
    if (state === 'done') return { ...view, step: 'done', done: view.of, answer: await answerOf(hall, job) };
    if (state === 'stopped') return { ...view, step: 'stopped', trouble: STOPPED };
    return state === 'refused' ? { ...view, step: 'refused', trouble: (job.outcome as RefusedOutcome).trouble } : view;
  }

  const imported = async (hall: InHall, id: string): Promise<Job | null> => {
    const job = await hall.store.jobs.job(id);
    return job?.kind === 'import' ? job : null;
  };

  return {
    async ask(hall, { kind, target, files, by }) {
      const order: ImportOrder = { kind, by };
      const job = await hall.store.jobs.add({ kind: 'import', target, order, progress: notBegun(files), by, alone: null, uploads: files, at: hall.now() });
      return viewOf(hall, job!);
    },

    async outcome(hall, id) {
      const job = await whenEnded(hall, id);
      const outcome: Outcome = job.state === 'done' ? { ok: true, answer: await answerOf(hall, job) } : job.state === 'stopped' ? { ok: false, status: 409, trouble: STOPPED } : { ok: false, ...(job.outcome as RefusedOutcome) };
      await hall.store.jobs.forget(id);
      return outcome;
    },

    async views(hall) {
      const jobs = await hall.store.jobs.since('import', new Date(hall.now().getTime() - KEPT_HOURS.import * 60 * 60 * 1000));
      return Promise.all(jobs.slice(-TOLD).map((job) => viewOf(hall, job)));
    },

    async view(hall, id) {
      const job = await imported(hall, id);
      return job && viewOf(hall, job);
    },

    async leave(hall, id) {
      if (!(await imported(hall, id))) return false;
      if (!(await hall.store.jobs.stop(id))) await hall.store.jobs.forget(id);
      return true;
    },
  };
}
