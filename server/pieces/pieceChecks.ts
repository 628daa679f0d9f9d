import type { Trouble, WorkView } from '../../core/agreement/wire/http.ts';
import type { PieceCheck, PieceFinding } from '../../core/agreement/wire/piece.ts';
import type { InHall } from '../http/deps.ts';
import type { RefusedOutcome } from '../queue/handler.ts';
import { whole } from '../store/inPieces.ts';
import { isUnderWay, type Job } from '../store/jobs.ts';
import { changedSince, type Since } from './before.ts';
import { groundsOf } from './ground.ts';
import type { PieceJobProgress, PieceOutcome } from './pieceJob.ts';

/** Works of which it is remembered how far their logs were read. Chosen, not measured. */
const KEPT = 12;

/** Whole pieces looked through in the background, one look a work at a time; what was found last is kept. */
export interface PieceChecks {
  /** Looks through a work, or joins those who wait for the same already. */
  ask(hall: InHall, work: WorkView, person: string): Promise<void>;
  /** This person waits no more; when nobody does, it is stopped. */
  leave(hall: InHall, work: string, person: string): Promise<void>;
  view(hall: InHall, work: WorkView, person: string): Promise<PieceCheck>;
  /** What was found in one part; null where nobody has looked. */
  findings(hall: InHall, work: string, part: string): Promise<readonly PieceFinding[] | null>;
}

const isRunning = (job: Job): boolean => !job.stopped && isUnderWay(job);
const hasFound = ({ state }: Job): boolean => state === 'done';

export function createPieceChecks(): PieceChecks {
  /** How far logs were read after a look, so that no row is read twice. */
  const read = new Map<string, Since[]>();

  function sinceOf({ id, outcome }: Job): Since[] {
    const since = read.get(id) ?? (outcome as PieceOutcome).parts.map(({ id: part, name, head }) => ({ id: part, name, head, changed: false }));
    // Set again, so that the map runs from the longest unused to the latest.
    read.delete(id);
    read.set(id, since);
    if (read.size > KEPT) read.delete(read.keys().next().value!);
    return since;
  }

  async function before(hall: InHall, work: WorkView, job: Job): Promise<string[]> {
    const grounds = await groundsOf(hall.store, work);
    const { parts } = job.outcome as PieceOutcome;
    const since = sinceOf(job);
    for (const [index, part] of since.entries()) part.changed ||= grounds.get(part.id) !== parts[index]!.ground;
    return changedSince(hall.store.log, since);
  }

  const looks = (hall: InHall, work: string): Promise<Job[]> => hall.store.jobs.of('check', work);

  return {
    async ask(hall, work, person) {
      const { jobs } = hall.store;
      const all = await looks(hall, work.id);
      const running = all.find(isRunning);
      if (running && (await jobs.join(running.id, person))) return;
      const progress: PieceJobProgress = { names: work.parts.map(({ name }) => name), reading: null };
      const added = await jobs.add({ kind: 'check', target: work.id, order: null, progress, by: person, alone: `check ${work.id}`, uploads: [], at: hall.now() });
      // Somebody asked in the same moment.
      if (!added) for (const one of await looks(hall, work.id)) if (isRunning(one)) await jobs.join(one.id, person);
      for (const { id } of all.filter(hasFound).slice(1)) await jobs.forget(id);
    },

    async leave(hall, work, person) {
      for (const one of await looks(hall, work)) if (isRunning(one)) await hall.store.jobs.leave(one.id, person);
    },

    async view(hall, work, person) {
      const all = await looks(hall, work.id);
      const running = all.find(isRunning);
      const found = all.find(hasFound);
      const last = running ?? all.find(({ state }) => state === 'done' || state === 'refused');
      const trouble: Trouble | null = last?.state === 'refused' ? (last.outcome as RefusedOutcome).trouble : null;
      const { names, reading } = (running?.progress ?? { names: [], reading: null }) as PieceJobProgress;
      const progress = running ? { done: reading ?? 0, of: names.length, reading: reading === null ? null : names[reading]!, mine: running.askers.includes(person) } : null;
      if (!found) return { running: progress, found: null, trouble };
      const { at, parts } = found.outcome as PieceOutcome;
      return { running: progress, found: { at, parts: parts.map(({ tally }) => tally), before: await before(hall, work, found) }, trouble };
    },

    async findings(hall, work, part) {
      const found = (await looks(hall, work)).find(hasFound);
      const place = found ? (found.outcome as PieceOutcome).parts.findIndex(({ id }) => id === part) : -1;
      const made = place < 0 ? null : await hall.store.jobs.made(found!.id, place);
      if (!made) return null;
      return JSON.parse((await whole(hall.store.jobs.bytes(made.files[0]!.id))).toString('utf8')) as PieceFinding[];
    },
  };
}
