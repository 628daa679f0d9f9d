import { randomUUID } from 'node:crypto';
import type { ImportAnswer, Trouble } from '../../core/agreement/wire/http.ts';
import { isUnderWay, type ImportView } from '../../core/agreement/wire/imports.ts';
import type { Hall } from '../halls.ts';
import type { Deps } from '../http/deps.ts';
import { awayFor } from '../http/errors.ts';
import { incidentName } from '../http/incident.ts';
import { importEdition, importParts, importWork, type Laid } from '../http/layOnShelf.ts';
import { notFound } from '../http/trouble.ts';
import { Turnstile } from '../jobs/turnstile.ts';
import type { NewEdition } from '../store/library.ts';
import { isUnavailable } from '../store/unavailable.ts';
import { createSpool, type Spool, type Spooled } from './spool.ts';
import type { Watch } from './watch.ts';

/** Imports that have ended are kept so long, and so many of them. Chosen, not measured. */
const KEPT_MS = 24 * 60 * 60 * 1000;
const KEPT = 300;

export interface ImportOrder {
  kind: ImportView['kind'];
  /** The programme of a new work, else the work. */
  target: string;
  files: readonly Spooled[];
  by: string;
  /** Whose shelf they are laid on. */
  hall: Hall;
}

export type Outcome = { ok: true; answer: ImportAnswer } | { ok: false; status: number; trouble: Trouble };

export interface Imports {
  spool: Spool;
  /** Begins an import, or sets it behind those that wait. */
  ask(order: ImportOrder): { view: ImportView; ended: Promise<Outcome> };
  /** Those under way and those of the last day, in the order they came. */
  views(ensemble: string): ImportView[];
  view(ensemble: string, id: string): ImportView | null;
  /** Stops an import that is under way, or forgets one that has ended. False where there is none. */
  leave(ensemble: string, id: string): boolean;
  close(): Promise<void>;
}

const STOPPED: Trouble = { code: 'STOPPED', text: 'The import was stopped, and nothing of it was kept.' };
const LAY = { work: importWork, parts: importParts, edition: (...[tools, work, [edition], watch]: Parameters<typeof importParts>) => importEdition(tools, work, edition!, watch) };

/** Scores come in one after another in the background, each with its progress, so that a season's worth never takes more room than one work. In memory: after a restart what waited is sent again. */
export function createImports(deps: Deps): Imports {
  const spool = createSpool();
  const turns = new Turnstile(1);
  const jobs = new Map<string, { ensemble: string; view: ImportView; stop: AbortController }>();
  const jobOf = (ensemble: string, id: string) => [jobs.get(id)].find((job) => job?.ensemble === ensemble);

  function faultOf(id: string, reason: unknown): Exclude<Outcome, { ok: true }> {
    if (isUnavailable(reason)) return { ok: false, status: 503, trouble: awayFor(reason) };
    const incident = incidentName();
    deps.log(`Fault "${incident}" in import ${id}`, reason, { incident, import: id });
    return { ok: false, status: 500, trouble: { code: 'FAULT', text: `Something broke in the library, and it is not your doing. Tell whoever looks after Bowline this name: ${incident}.`, incident } };
  }

  function outcomeOf(laid: Laid, kind: ImportView['kind']): Outcome {
    if (laid.ok) {
      deps.notices.renewed(laid.parts);
      return { ok: true, answer: laid.answer };
    }
    return 'missing' in laid ? { ok: false, status: 404, trouble: notFound(kind === 'work' ? 'programme' : 'work').body } : { ok: false, status: 422, trouble: laid.trouble };
  }

  async function lay({ kind, target, files, by, hall }: ImportOrder, watch: Watch): Promise<Laid> {
    watch.signal?.throwIfAborted();
    watch.onStep?.('reading');
    const editions: NewEdition[] = [];
    for (const file of files) editions.push({ bytes: await spool.read(file), fileName: file.fileName, by, at: deps.now() });
    return LAY[kind]({ store: hall.store, documents: deps.documents }, target, editions, watch);
  }

  async function run(order: ImportOrder, view: ImportView, { signal }: AbortController): Promise<Outcome> {
    const watch: Watch = {
      signal,
      onStep(step) {
        view.step = step;
        view.done = step === 'laying' ? view.of - 2 : step === 'keeping' ? view.of - 1 : view.done;
      },
      onFile(index, news) {
        Object.assign(view.files[index]!, news);
        view.done = index * 2 + (news.step === 'unpacking' ? 0 : news.step === 'reading' ? 1 : 2);
      },
    };
    try {
      return outcomeOf(await turns.pass(() => lay(order, watch)), order.kind);
    } catch (reason) {
      return signal.aborted ? { ok: false, status: 409, trouble: STOPPED } : faultOf(view.id, reason);
    } finally {
      await spool.drop(order.files);
    }
  }

  function end(view: ImportView, outcome: Outcome): Outcome {
    if (outcome.ok) Object.assign(view, { step: 'done', done: view.of, answer: outcome.answer });
    else Object.assign(view, { step: outcome.trouble.code === STOPPED.code ? 'stopped' : 'refused', trouble: outcome.trouble });
    return outcome;
  }

  function forgetOld(): void {
    const ended = [...jobs.values()].filter(({ view }) => !isUnderWay(view));
    const oldest = deps.now().getTime() - KEPT_MS;
    ended.forEach(({ view }, index) => {
      if (ended.length - index > KEPT || Date.parse(view.at) < oldest) jobs.delete(view.id);
    });
  }

  return {
    spool,

    ask(order) {
      forgetOld();
      const { kind, target, files } = order;
      const view: ImportView = {
        id: randomUUID(),
        kind,
        programme: kind === 'work' ? target : null,
        work: kind === 'work' ? null : target,
        files: files.map(({ fileName }) => ({ fileName, step: 'waiting', parts: [], trouble: null })),
        step: 'waiting',
        done: 0,
        of: files.length * 2 + 2,
        answer: null,
        trouble: null,
        at: deps.now().toISOString(),
      };
      const stop = new AbortController();
      jobs.set(view.id, { ensemble: order.hall.ensemble, view, stop });
      return { view, ended: run(order, view, stop).then((outcome) => end(view, outcome)) };
    },

    views(ensemble) {
      forgetOld();
      return [...jobs.values()].filter((job) => job.ensemble === ensemble).map(({ view }) => view);
    },

    view: (ensemble, id) => jobOf(ensemble, id)?.view ?? null,

    leave(ensemble, id) {
      const job = jobOf(ensemble, id);
      if (!job) return false;
      if (isUnderWay(job.view)) job.stop.abort();
      else jobs.delete(id);
      return true;
    },

    async close() {
      for (const { stop } of jobs.values()) stop.abort();
      await spool.close();
    },
  };
}
