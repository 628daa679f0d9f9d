import type { Trouble, WorkView } from '../../core/agreement/wire/http.ts';
import type { PartTally, PieceCheck, PieceFinding } from '../../core/agreement/wire/piece.ts';
import type { Hall } from '../halls.ts';
import type { Deps } from '../http/deps.ts';
import { incidentName } from '../http/incident.ts';
import { Exhausted } from '../jobs/runInWorker.ts';
import { changedSince, type Since } from './before.ts';
import { gather, type Gathered } from './gather.ts';

/** Works whose findings are kept. Chosen, not measured. */
const KEPT = 12;

export interface PieceChecks {
  /** Looks through a work, or joins those who wait for the same already. */
  ask(hall: Hall, work: WorkView, person: string): void;
  /** This person waits no more; when nobody does, it is stopped. */
  leave(work: string, person: string): void;
  view(hall: Hall, work: string, person: string): Promise<PieceCheck>;
  /** What was found in one part; null where nobody has looked. */
  findings(work: string, part: string): readonly PieceFinding[] | null;
  close(): void;
}

interface Running {
  waiting: Set<string>;
  stop: AbortController;
  names: readonly string[];
  /** Index of the part being read; null before its turn has come. */
  reading: number | null;
  /** Parts whose music, section or settings were exchanged meanwhile. */
  renewed: Set<string>;
}

interface Found {
  at: string;
  parts: (Since & { tally: PartTally; findings: readonly PieceFinding[] })[];
}

interface Piece {
  running: Running | null;
  found: Found | null;
  trouble: Trouble | null;
}

function tallied(id: string, name: string, findings: readonly PieceFinding[]): PartTally {
  const tally: PartTally = { id, name, counts: { cannotPlay: 0, collides: 0, worthALook: 0 }, rested: 0 };
  for (const { severity, rested } of findings) {
    if (rested) tally.rested += 1;
    else tally.counts[severity] += 1;
  }
  return tally;
}

/** Looks through whole pieces in the background, one look a work at a time, and keeps what was found last. In memory: after a restart somebody asks again. */
export function createPieceChecks(deps: Pick<Deps, 'notices' | 'lookThrough' | 'now' | 'log'>): PieceChecks {
  const pieces = new Map<string, Piece>();

  deps.notices.listen({
    renewed: (parts) => {
      for (const { running, found } of pieces.values()) {
        for (const id of parts) running?.renewed.add(id);
        for (const part of found?.parts ?? []) if (parts.includes(part.id)) part.changed = true;
      }
    },
  });

  function pieceOf(work: string): Piece {
    const piece = pieces.get(work) ?? { running: null, found: null, trouble: null };
    // Set again, so that the map runs from the longest unused to the latest.
    pieces.delete(work);
    pieces.set(work, piece);
    for (const [id, old] of pieces) {
      if (pieces.size <= KEPT) break;
      if (!old.running) pieces.delete(id);
    }
    return piece;
  }

  function troubleWith(work: string, reason: unknown): Trouble {
    if (reason instanceof Exhausted) return { code: 'TOO_BIG', text: `Looking through this piece takes more ${reason.message} than the library can give. Look at its parts one by one on the stand.` };
    const incident = incidentName();
    deps.log(`Fault "${incident}" while looking through work ${work}`, reason, { incident, work });
    return { code: 'FAULT', text: `Something broke while the piece was looked through, and it is not your doing. Tell whoever looks after Bowline this name: ${incident}.`, incident };
  }

  async function look(hall: Hall, work: WorkView, running: Running): Promise<Found> {
    const at = deps.now().toISOString();
    const gathered: Gathered[] = await gather(hall, work, running.stop.signal);
    running.names = gathered.map(({ name }) => name);
    const answers = await deps.lookThrough(gathered.map((part) => part.packed), { signal: running.stop.signal, onReached: (part) => (running.reading = part) });
    const parts = gathered.map(({ id, name, head }, i) => ({ id, name, head, changed: running.renewed.has(id), tally: tallied(id, name, answers[i]!.findings), findings: answers[i]!.findings }));
    return { at, parts };
  }

  return {
    ask(hall, work, person) {
      const piece = pieceOf(work.id);
      if (piece.running) return void piece.running.waiting.add(person);
      const running: Running = { waiting: new Set([person]), stop: new AbortController(), names: work.parts.map(({ name }) => name), reading: null, renewed: new Set() };
      piece.running = running;
      piece.trouble = null;
      look(hall, work, running)
        .then(
          (found) => void (piece.found = found),
          (reason: unknown) => {
            if (!running.stop.signal.aborted) piece.trouble = troubleWith(work.id, reason);
          },
        )
        .finally(() => {
          if (piece.running === running) piece.running = null;
        });
    },

    leave(work, person) {
      const piece = pieces.get(work);
      if (!piece?.running?.waiting.delete(person) || piece.running.waiting.size > 0) return;
      piece.running.stop.abort();
      piece.running = null;
    },

    async view(hall, work, person) {
      const { running, found, trouble } = pieces.get(work) ?? { running: null, found: null, trouble: null };
      const progress = running && { done: running.reading ?? 0, of: running.names.length, reading: running.reading === null ? null : running.names[running.reading]!, mine: running.waiting.has(person) };
      return { running: progress, found: found && { at: found.at, parts: found.parts.map(({ tally }) => tally), before: await changedSince(hall.store.log, found.parts) }, trouble };
    },

    findings: (work, part) => pieces.get(work)?.found?.parts.find(({ id }) => id === part)?.findings ?? null,

    close() {
      for (const { running } of pieces.values()) running?.stop.abort();
    },
  };
}
