import type { ImportAnswer } from '../../core/agreement/wire/http.ts';
import { importEdition, importParts, importWork, type Laid } from '../http/layOnShelf.ts';
import { notFound } from '../http/trouble.ts';
import type { Became, Doing, Handler } from '../queue/handler.ts';
import { whole } from '../store/inPieces.ts';
import type { NewEdition } from '../store/library.ts';
import { type ImportOrder, notBegun } from './importOrder.ts';
import type { Watch } from './watch.ts';

/** What an import came to: the work it is in, and its notes. */
export interface ImportOutcome {
  work: string;
  notes: ImportAnswer['notes'];
}

const LAY = { work: importWork, parts: importParts, edition: (...[tools, work, [edition], watch]: Parameters<typeof importParts>) => importEdition(tools, work, edition!, watch) };
/** Names of parts that fit one piece of news. */
const TOLD_AT_ONCE = 100;

/** Lays the scores of one import on the shelf; its end is written in the transaction that lays them, so that begun twice it is laid once. */
export const importJob: Handler = async (doing) => {
  const { hall, job } = doing;
  const { kind, by } = job.order as ImportOrder;
  const watch = watched(doing);
  watch.onStep?.('reading');
  const editions: NewEdition[] = [];
  for (const { id, fileName } of job.uploads) editions.push({ bytes: await whole(hall.store.jobs.bytes(id)), fileName, by, at: hall.now() });
  const laid = await LAY[kind](hall, job.target, editions, watch);
  for (let at = 0; laid.ok && at < laid.parts.length; at += TOLD_AT_ONCE) hall.queue.tell({ what: 'renewed', parts: laid.parts.slice(at, at + TOLD_AT_ONCE) });
  return laid.ok ? 'written' : refusal(laid, kind);
};

function watched({ job, signal, report, ending }: Doing): Watch {
  const progress = notBegun(job.uploads);
  return {
    signal,
    onStep(step) {
      progress.step = step;
      progress.done = step === 'laying' ? progress.of - 2 : step === 'keeping' ? progress.of - 1 : progress.done;
      report(structuredClone(progress));
    },
    onFile(index, news) {
      Object.assign(progress.files[index]!, news);
      progress.done = index * 2 + (news.step === 'unpacking' ? 0 : news.step === 'reading' ? 1 : 2);
      report(structuredClone(progress));
    },
    ending: (notes) => ending<string>((work): ImportOutcome => ({ work, notes })),
  };
}

function refusal(laid: Exclude<Laid, { ok: true }>, kind: ImportOrder['kind']): Became {
  const outcome = 'missing' in laid ? { status: 404, trouble: notFound(kind === 'work' ? 'programme' : 'work').body } : { status: 422, trouble: laid.trouble };
  return { state: 'refused', outcome };
}
