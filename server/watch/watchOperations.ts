import { isOperationName } from '../../core/agreement/registry.ts';
import type { Authority } from '../operations/authority.ts';
import type { Answer } from '../operations/rule.ts';
import { isUnavailable } from '../store/unavailable.ts';
import type { Measures, Outcome } from './measures.ts';
import type { Daybook } from './daybook.ts';

/** Counts and records what is asked of the authorities of all ensembles, by operation id; who asked and what they wrote is in the log of the part alone. */
export function watchOperations(measures: Measures, daybook: Daybook): (authority: Authority, ensemble: string) => Authority {
  let waiting = 0;
  measures.gauge('bowline_operations_waiting', 'Operations asked for and not yet answered.', () => waiting);
  return (authority, ensemble) => ({
    ...authority,
    async submit(part, asked) {
      const start = performance.now();
      const { operation, name } = asked.request;
      const note = (outcome: Outcome, more: { seq?: number; code?: string } = {}) => {
        const took = performance.now() - start;
        measures.operation(isOperationName(name) ? name : 'unknown', outcome, took / 1000);
        daybook.event('operation', { operation, name: isOperationName(name) ? name : 'unknown', part, ensemble, outcome, ...more, ms: Math.round(took) });
      };
      waiting += 1;
      try {
        const answer = await authority.submit(part, asked);
        note(outcomeOf(answer), answer === null ? {} : 'entry' in answer ? { seq: answer.entry.seq } : 'refusal' in answer ? { code: answer.refusal.code } : {});
        return answer;
      } catch (reason) {
        note(isUnavailable(reason) ? 'away' : 'fault');
        throw reason;
      } finally {
        waiting -= 1;
      }
    },
  });
}

function outcomeOf(answer: Answer | null): Outcome {
  if (answer === null) return 'noSuchPart';
  if (answer.ok) return 'written';
  return 'refusal' in answer ? 'refused' : 'signedOut' in answer ? 'signedOut' : 'fault';
}
