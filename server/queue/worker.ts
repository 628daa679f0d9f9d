import { randomUUID } from 'node:crypto';
import type { Deps } from '../http/deps.ts';
import { faultCalled, incidentName } from '../http/incident.ts';
import { TurnLost } from '../store/jobs.ts';
import { isUnavailable } from '../store/unavailable.ts';
import type { Daybook } from '../watch/daybook.ts';
import type { Became, Handler, RefusedOutcome } from './handler.ts';
import { HANDLERS } from './handlers.ts';
import { type Kind, KINDS, type Place } from './queue.ts';
import { createReporting } from './reporting.ts';

/** Looks for work so often where no news comes, for jobs whose worker is gone, and for what is kept too long. Chosen, not measured. */
const LOOK_MS = 2_000;
const BACK_MS = 2_000;
const SWEEP_MS = 60_000;

/** Why a job is taken out of a worker's hands. */
const STOPPED = new Error('Stopped by who asked.');
const LOST = new Error('Taken up by another worker.');
const DRAINING = new Error('This worker goes.');

/** Prints take turns copy by copy at the engraver's door, so that a single one does not stand behind a whole work's. Chosen, not measured. */
const PRINTS = 4;

export interface WorkerOptions {
  /** Jobs of each kind at once. */
  atOnce: number;
  handlers?: Record<Kind, Handler>;
  /** Hears what becomes of jobs. */
  event?: Daybook['event'];
}

export interface JobWorker {
  /** Takes no more; what is not done after so long is given back as if it had not been begun. */
  drain(patienceMs: number): Promise<void>;
}

/** Takes jobs out of the lines and does them, until it is drained. */
export function startWorker(deps: Deps, { atOnce, handlers = HANDLERS, event = () => {} }: WorkerOptions): JobWorker {
  const { queue, hall, now, log } = deps;
  const running = new Map<string, { place: Place; stop: AbortController }>();
  const wakers = new Map<() => void, boolean>();
  let draining = false;

  /** Work has come, or (everybody) this worker goes. */
  const wake = (everybody = false): void => wakers.forEach((isHungry, waker) => (isHungry || everybody ? waker() : undefined));
  const unlisten = queue.listen((news) => {
    if (news.what === 'asked') return wake();
    if (news.what === 'lost') return running.get(news.job)?.stop.abort(LOST);
    if (news.what === 'job' && running.has(news.job)) void lookAt(news.job);
  });

  /** Whether a job in hand is to stop. */
  async function lookAt(id: string): Promise<void> {
    const one = running.get(id);
    const job = await hall(one!.place.ensemble).store.jobs.job(id).catch(() => undefined);
    if (job === null || job?.stopped) one!.stop.abort(STOPPED);
  }

  const pause = (ms: number, isHungry: boolean) =>
    new Promise<void>((resolve) => {
      const end = () => {
        clearTimeout(timer);
        wakers.delete(end);
        resolve();
      };
      const timer = setTimeout(end, ms);
      wakers.set(end, isHungry);
    });

  async function work(place: Place): Promise<void> {
    const { jobs } = hall(place.ensemble).store;
    const turn = randomUUID();
    const job = await jobs.begin(place.job, turn);
    if (!job) return queue.end(place);
    const stop = new AbortController();
    running.set(job.id, { place, stop });
    const reporting = createReporting(job.progress, (progress) => jobs.report(job.id, turn, progress));
    const ending = <Result>(outcome: (result: Result) => unknown) => ({ job: job.id, turn, progress: () => reporting.last(), outcome });
    const end = (state: 'done' | 'refused' | 'stopped', outcome: unknown) => jobs.end(ending(() => outcome), state);
    const began = performance.now();
    try {
      event('job begun', { job: job.id, kind: job.kind, ensemble: place.ensemble });
      await lookAt(job.id);
      let state: string;
      try {
        stop.signal.throwIfAborted();
        const became: Became = await handlers[job.kind]({ hall: { ...deps, ...hall(place.ensemble) }, job, turn, signal: stop.signal, report: reporting.say, ending });
        await reporting.close();
        state = became === 'written' ? 'done' : became.state;
        if (became === 'written') queue.tell({ what: 'job', job: job.id });
        else await end(became.state, became.outcome);
      } catch (reason) {
        await reporting.close();
        if (stop.signal.reason === DRAINING || stop.signal.reason === LOST || isUnavailable(reason)) throw reason;
        if (stop.signal.reason === STOPPED || reason instanceof TurnLost) {
          if (!(await end((state = 'stopped'), null))) throw LOST;
        } else await end((state = 'refused'), faultOf(place, reason));
      }
      await jobs.dropUploads(job.uploads);
      event('job ended', { job: job.id, kind: job.kind, ensemble: place.ensemble, state, ms: Math.round(performance.now() - began) });
      running.delete(job.id);
      await queue.end(place);
    } catch (reason) {
      running.delete(job.id);
      event('job given back', { job: job.id, kind: job.kind, ensemble: place.ensemble, why: (reason as Error).message });
      await queue.giveBack(place, reason === LOST || stop.signal.reason === LOST ? 'lost' : stop.signal.reason === DRAINING ? 'untried' : 'tried');
    }
  }

  function faultOf({ job, kind }: Place, reason: unknown): RefusedOutcome {
    const incident = incidentName();
    log(`Fault "${incident}" in ${kind} ${job}`, reason, { incident, job });
    return { status: 500, trouble: faultCalled(incident) };
  }

  /** Runs a step again and again; a database that is away is waited for. */
  async function loop(step: () => Promise<boolean>, ms: number, isHungry = false): Promise<void> {
    while (!draining) {
      const more = await step().catch((reason: unknown) => {
        if (!isUnavailable(reason)) log('A worker stumbled.', reason);
        return false;
      });
      if (!more && !draining) await pause(ms, isHungry);
    }
  }

  async function next(kind: Kind): Promise<boolean> {
    const place = await queue.take(kind);
    if (place && draining) await queue.giveBack(place, 'untried');
    else if (place) await work(place);
    return place !== null;
  }

  async function takeBack(): Promise<boolean> {
    await queue.takeBack();
    for (let place = await queue.takeGivenUp(); place; place = await queue.takeGivenUp()) {
      event('job given up', { ...place });
      await hall(place.ensemble).store.jobs.giveUp(place.job, GIVEN_UP);
      await queue.end(place);
    }
    for (const id of running.keys()) await lookAt(id);
    return false;
  }

  async function sweep(): Promise<boolean> {
    await queue.tidy();
    event('worker alive', { running: running.size, megabytes: Math.round(process.memoryUsage.rss() / 1024 / 1024) });
    for (const { id } of await deps.door.ensembles()) await hall(id).store.jobs.sweep(now());
    return false;
  }

  const loops = [...KINDS.flatMap((kind) => Array.from({ length: kind === 'print' ? atOnce * PRINTS : atOnce }, () => loop(() => next(kind), LOOK_MS, true))), loop(takeBack, BACK_MS), loop(sweep, SWEEP_MS)];

  return {
    async drain(patienceMs) {
      draining = true;
      wake(true);
      const timer = setTimeout(() => running.forEach(({ stop }) => stop.abort(DRAINING)), patienceMs);
      await Promise.all(loops);
      clearTimeout(timer);
      unlisten();
    },
  };
}

const GIVEN_UP: RefusedOutcome = { status: 500, trouble: { code: 'GIVEN_UP', text: 'The library broke off three times while it worked at this, so it was put aside, and nothing of it was kept. Ask for it once more; if it happens again, tell whoever looks after Bowline.' } };
