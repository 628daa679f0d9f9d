import { evolve } from '../../core/agreement/evolve.ts';
import type { Actor } from '../../core/agreement/people.ts';
import type { Refusal } from '../../core/agreement/refusal.ts';
import { run } from '../../core/agreement/run.ts';
import type { AgreementState, PartFacts } from '../../core/agreement/state.ts';
import type { Queued } from './queue.ts';

export interface Prediction {
  state: AgreementState;
  /** Operations that would be refused as things stand now: still waiting for the server's word, but not shown. */
  doubtful: ReadonlyMap<string, Refusal>;
}

/** The state as it will be when the server has taken everything that waits, in order: `confirmed`, then each operation that would be let through. */
export function predict(confirmed: AgreementState, waiting: readonly Queued[], me: Actor, facts: PartFacts): Prediction {
  const doubtful = new Map<string, Refusal>();
  const state = waiting.reduce((now, one) => {
    const decision = run(now, one, me, facts);
    if (decision.ok) return evolve(now, { ...one, seq: now.seq + 1, events: decision.events, by: me.id, byName: me.name });
    doubtful.set(one.operation, decision.refusal);
    return now;
  }, confirmed);
  return { state, doubtful };
}
