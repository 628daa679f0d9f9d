import type { AgreementEvent } from './event.ts';
import type { Actor } from './people.ts';
import type { AgreementState } from './state.ts';

/**
 * The stage a part reaches by itself when `by` proposes or votes, as events to add (none or one): a pulled part that its principal
 * writes on is with the principal; as soon as anybody else of the section writes or votes it is round the section. From "inked in"
 * on a part only moves by hand, so that a late change does not take it off the stands. Source: common practice, no source.
 * Example: `stageAfter(emptyState(), principal)` is `[{ type: 'movedOn', stage: 'withPrincipal' }]`.
 */
export function stageAfter(state: AgreementState, by: Actor): AgreementEvent[] {
  const principal = by.roles.includes('principal');
  if (state.stage === 'pulled') return [{ type: 'movedOn', stage: principal ? 'withPrincipal' : 'roundSection' }];
  if (state.stage === 'withPrincipal' && !principal) return [{ type: 'movedOn', stage: 'roundSection' }];
  return [];
}
