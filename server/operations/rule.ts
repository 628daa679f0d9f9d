import { evolve } from '../../core/agreement/evolve.ts';
import type { LogEntry } from '../../core/agreement/event.ts';
import { refused as refusal } from '../../core/agreement/refusal.ts';
import { run, type Request } from '../../core/agreement/run.ts';
import type { AgreementState } from '../../core/agreement/state.ts';
import { askerKey, isRefused, type Asker, type Ground, type RefusedOperation, type Ruling } from '../store/partLog.ts';
import type { LoadedPart } from './loadedPart.ts';

export interface Asked {
  request: Request;
  asker: Asker;
}

export type Answer = { ok: true; entry: LogEntry } | { ok: false; refusal: RefusedOperation['refusal'] } | { ok: false; signedOut: true } | { ok: false; fault: unknown };

export interface RuledBatch extends Ruling {
  answers: Answer[];
  state: AgreementState;
}

/** Rows between two snapshots. Chosen, not measured. */
const SNAPSHOT_EVERY = 200;

/** Rules on a batch in the order it arrived. Pure: the ground and the time are given. */
export function rule(part: string, batch: Asked[], loaded: LoadedPart, ground: Ground, at: string): RuledBatch {
  let state = loaded.state;
  const entries: LogEntry[] = [];
  const refused: RefusedOperation[] = [];
  const known = new Map(ground.known);

  function answer({ request, asker }: Asked): Answer {
    const actor = ground.actors.get(askerKey(asker));
    if (!actor) return { ok: false, signedOut: true };
    const { operation, name } = request;
    const before = known.get(operation);
    if (before) return again(before, part, name, actor.id);
    const decision = run(state, request, actor, { ...loaded.notes, seats: ground.seats });
    if (!decision.ok) {
      const row = { operation, part, name, by: actor.id, at, refusal: decision.refusal };
      refused.push(row);
      known.set(operation, row);
      return decision;
    }
    const entry: LogEntry = { seq: state.seq + 1, operation, name, input: request.input, events: decision.events, by: actor.id, byName: actor.name, at };
    state = evolve(state, entry);
    entries.push(entry);
    known.set(operation, { part, entry });
    return { ok: true, entry };
  }

  const answers = batch.map((asked): Answer => {
    try {
      return answer(asked);
    } catch (fault) {
      return { ok: false, fault };
    }
  });
  const crossed = Math.floor(state.seq / SNAPSHOT_EVERY) > Math.floor(loaded.state.seq / SNAPSHOT_EVERY);
  const open = Object.values(state.proposals).filter((proposal) => proposal.status === 'open').length;
  return { entries, refused, shelf: { stage: state.stage, locked: state.locked, open }, snapshot: crossed ? state : null, answers, state };
}

/** The answer of an id that was answered before: the same, if it is the same person asking the same of the same part. */
function again(before: NonNullable<ReturnType<Ground['known']['get']>>, part: string, name: string, by: string): Answer {
  const first = isRefused(before) ? before : { part: before.part, name: before.entry.name, by: before.entry.by };
  if (first.part !== part || first.name !== name || first.by !== by) return refusal('ALREADY_THERE');
  return isRefused(before) ? { ok: false, refusal: before.refusal } : { ok: true, entry: before.entry };
}
