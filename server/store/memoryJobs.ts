import { randomUUID } from 'node:crypto';
import type { Queue } from '../queue/queue.ts';
import { inPieces } from './inPieces.ts';
import { type Ending, isUnderWay, type Job, type Jobs, KEPT_HOURS, type Made, type MadeFile, STRAY_HOURS, TurnLost, type Upload } from './jobs.ts';

interface MemoryJob extends Job {
  alone: string | null;
  turn: string | null;
  ended: Date | null;
  made: Map<number, Made>;
}

export interface MemoryJobs extends Jobs {
  /** Ends a job together with its effect: called before anything is changed, throws where nothing may be. */
  mayEnd(ending: Pick<Ending<never>, 'job' | 'turn'>): void;
  endWith<Result>(ending: Ending<Result>, result: Result): void;
  isImport(id: string): boolean;
}

const copy = <T>(value: T): T => structuredClone(value);

export function createMemoryJobs(queue: Queue, ensemble: string): MemoryJobs {
  const jobs = new Map<string, MemoryJob>();
  const files = new Map<string, { pieces: Buffer[]; at: Date; job: string | null }>();

  const shown = ({ alone: _, turn: _turn, ended: _ended, made: _made, ...job }: MemoryJob): Job => copy(job);
  const tellOf = (job: string): void => queue.tell({ what: 'job', job });
  const atTurn = (id: string, turn: string): MemoryJob | null => {
    const job = jobs.get(id);
    return job?.state === 'running' && job.turn === turn ? job : null;
  };

  async function keep(bytes: AsyncIterable<Uint8Array> | Iterable<Uint8Array>, job: string | null): Promise<string> {
    const pieces: Buffer[] = [];
    for await (const piece of inPieces(bytes)) pieces.push(piece);
    const id = randomUUID();
    files.set(id, { pieces, at: new Date(), job });
    return id;
  }

  function take(id: string): void {
    jobs.delete(id);
    for (const [file, { job }] of files) if (job === id) files.delete(file);
  }

  function close(job: MemoryJob, state: Job['state'], outcome: unknown): void {
    Object.assign(job, { state, outcome: copy(outcome), alone: null, ended: new Date() });
  }

  async function stop(id: string): Promise<boolean> {
    const job = jobs.get(id);
    if (!job || !isUnderWay(job)) return false;
    job.stopped = true;
    job.alone = null;
    if (job.state === 'waiting') close(job, 'stopped', null);
    await queue.drop({ job: id, kind: job.kind, ensemble });
    tellOf(id);
    return true;
  }

  return {
    async keepUpload(fileName, bytes): Promise<Upload> {
      return { id: await keep(bytes, null), fileName };
    },
    dropUploads: async (uploads) => uploads.forEach(({ id }) => files.delete(id)),
    async *bytes(file) {
      yield* files.get(file)?.pieces ?? [];
    },

    async add({ by, alone, ...asked }) {
      if (alone !== null && [...jobs.values()].some((job) => job.alone === alone)) return null;
      const id = randomUUID();
      jobs.set(id, { ...copy(asked), id, alone, askers: [by], state: 'waiting', stopped: false, outcome: null, turn: null, ended: null, made: new Map() });
      for (const upload of asked.uploads) files.get(upload.id)!.job = id;
      await queue.put({ job: id, kind: asked.kind, ensemble });
      queue.tell({ what: 'asked', kind: asked.kind });
      return shown(jobs.get(id)!);
    },
    job: async (id) => (jobs.has(id) ? shown(jobs.get(id)!) : null),
    since: async (kind, at) => [...jobs.values()].filter((job) => job.kind === kind && job.at >= at).map(shown),
    of: async (kind, target) => [...jobs.values()].filter((job) => job.kind === kind && job.target === target).map(shown).reverse(),
    ahead: ({ id, kind }) => queue.ahead({ job: id, kind, ensemble }),

    async join(id, person) {
      const job = jobs.get(id);
      if (!job || !isUnderWay(job) || job.stopped) return false;
      job.askers = [...job.askers.filter((asker) => asker !== person), person];
      return true;
    },
    async leave(id, person) {
      const job = jobs.get(id);
      if (!job || !isUnderWay(job) || !job.askers.includes(person)) return;
      job.askers = job.askers.filter((asker) => asker !== person);
      if (job.askers.length === 0) await stop(id);
    },
    stop,
    async forget(id) {
      const job = jobs.get(id);
      if (job && !isUnderWay(job)) take(id);
    },

    async begin(id, turn) {
      const job = jobs.get(id);
      if (!job || !isUnderWay(job)) return null;
      job.turn = turn;
      job.state = 'running';
      if (job.stopped) close(job, 'stopped', null);
      return job.stopped ? null : shown(job);
    },
    async report(id, turn, progress) {
      const job = atTurn(id, turn);
      if (job) job.progress = copy(progress);
    },

    async keepMade(id, turn, place, made: readonly MadeFile[], notes) {
      const job = atTurn(id, turn);
      if (!job) return false;
      const kept: Made['files'] = [];
      for (const { bytes, mediaType } of made) kept.push({ id: await keep([bytes], id), mediaType, size: bytes.length });
      job.made.set(place, { notes: copy(notes), files: kept });
      tellOf(id);
      return true;
    },
    made: async (id, place) => jobs.get(id)?.made.get(place) ?? null,

    async end({ job: id, turn, progress, outcome }, state) {
      const job = atTurn(id, turn);
      if (job) {
        job.progress = copy(progress());
        close(job, state, outcome());
      }
      tellOf(id);
      return job !== null;
    },
    async giveUp(id, outcome) {
      const job = jobs.get(id);
      if (job && isUnderWay(job)) close(job, job.stopped ? 'stopped' : 'refused', outcome);
      tellOf(id);
    },

    isImport: (id) => jobs.get(id)?.kind === 'import',
    mayEnd({ job, turn }) {
      if (atTurn(job, turn)?.stopped !== false) throw new TurnLost(`Job ${job} is not at this turn any more.`);
    },
    endWith({ job: id, progress, outcome }, result) {
      const job = jobs.get(id)!;
      job.progress = copy(progress());
      close(job, 'done', outcome(result));
    },

    async sweep(now) {
      const before = (hours: number): Date => new Date(now.getTime() - hours * 60 * 60 * 1000);
      for (const job of [...jobs.values()]) if (job.ended && job.ended < before(KEPT_HOURS[job.kind])) take(job.id);
      for (const [id, { at, job }] of files) if (job === null && at < before(STRAY_HOURS)) files.delete(id);
    },
  };
}
