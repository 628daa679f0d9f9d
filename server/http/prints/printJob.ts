import type { z } from 'zod';
import { partNow } from '../../operations/partNow.ts';
import type { Handler } from '../../queue/handler.ts';
import { TurnLost } from '../../store/jobs.ts';
import { notFound, TroubleAnswer } from '../trouble.ts';
import { copyOf, type PrintsAsked } from './copyOf.ts';
import { FORMS, type Made } from './forms.ts';

export interface PrintOrder extends Omit<z.infer<typeof PrintsAsked>, 'copies'> {
  copies: { part: string; for: z.infer<typeof PrintsAsked>['copies'][number]['for'][number] }[];
}

/** What is told of a copy beside its files: what its file is called without its ending, and what became of it. */
export interface CopyNotes {
  name: string;
  made: { ok: true; turns: Extract<Made, { ok: true }>['turns']; warnings: string[] } | Extract<Made, { ok: false }>;
}

/** Makes copies one by one and keeps each as it is made, so that whoever waits has it, and begun anew only the rest is made. */
export const printJob: Handler = async ({ hall, job, turn, signal, report }) => {
  const { copies, form, ...look } = job.order as PrintOrder;
  const { jobs, library } = hall.store;
  try {
    for (const [place, { part: id, for: reader }] of copies.entries()) {
      signal.throwIfAborted();
      if (await jobs.made(job.id, place)) continue;
      const part = await library.part(id);
      if (!part) throw notFound('part');
      const { order, name } = await copyOf(hall, { part, ...(await partNow(hall, part)) }, reader, look);
      const made = await FORMS[form].make(hall, order, signal);
      const notes: CopyNotes = { name, made: made.ok ? { ok: true, turns: made.turns, warnings: made.warnings } : made };
      if (!(await jobs.keepMade(job.id, turn, place, made.ok ? made.files : [], notes))) throw new TurnLost(`Print ${job.id} is not at this turn any more.`);
      report({ made: place + 1, of: copies.length });
    }
  } catch (reason) {
    if (!(reason instanceof TroubleAnswer)) throw reason;
    return { state: 'refused', outcome: { status: reason.status, trouble: reason.body } };
  }
  return { state: 'done', outcome: null };
};
