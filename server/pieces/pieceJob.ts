import type { PartTally, PieceFinding } from '../../core/agreement/wire/piece.ts';
import type { Handler } from '../queue/handler.ts';
import { Exhausted } from '../jobs/runInWorker.ts';
import { notFound } from '../http/trouble.ts';
import { TurnLost } from '../store/jobs.ts';
import { gather } from './gather.ts';

/** How far a look has come: parts by name, and the index of the one being read, null before its turn has come. */
export interface PieceJobProgress {
  names: string[];
  reading: number | null;
}

/** What a look came to; what was found in a part is kept as a file at the part's place. */
export interface PieceOutcome {
  at: string;
  /** `ground`: what the part was read by besides its log. */
  parts: { id: string; name: string; head: number; ground: string; tally: PartTally }[];
}

function tallied(id: string, name: string, findings: readonly PieceFinding[]): PartTally {
  const tally: PartTally = { id, name, counts: { cannotPlay: 0, collides: 0, worthALook: 0 }, rested: 0 };
  for (const { severity, rested } of findings) {
    if (rested) tally.rested += 1;
    else tally.counts[severity] += 1;
  }
  return tally;
}

/** Looks through a whole piece. */
export const pieceJob: Handler = async ({ hall, job, turn, signal, report }) => {
  const at = hall.now().toISOString();
  const work = await hall.store.library.work(job.target);
  if (!work) return { state: 'refused', outcome: { status: 404, trouble: notFound('work').body } };
  const gathered = await gather(hall, work, signal);
  const names = gathered.map(({ name }) => name);
  try {
    const answers = await hall.lookThrough(gathered.map((part) => part.packed), { signal, onReached: (reading) => report({ names, reading } satisfies PieceJobProgress) });
    const outcome: PieceOutcome = { at, parts: [] };
    for (const [place, { id, name, head, ground }] of gathered.entries()) {
      const { findings } = answers[place]!;
      if (!(await hall.store.jobs.keepMade(job.id, turn, place, [{ bytes: Buffer.from(JSON.stringify(findings)), mediaType: 'application/json' }], null))) throw new TurnLost(`Look ${job.id} is not at this turn any more.`);
      outcome.parts.push({ id, name, head, ground, tally: tallied(id, name, findings) });
    }
    return { state: 'done', outcome };
  } catch (reason) {
    if (!(reason instanceof Exhausted)) throw reason;
    return { state: 'refused', outcome: { status: 422, trouble: { code: 'TOO_BIG', text: `Looking through this piece takes more ${reason.message} than the library can give. Look at its parts one by one on the stand.` } } };
  }
};
