import type { Actor } from './people.ts';
import { refused } from './refusal.ts';
import type { AgreementState, Proposal, ProposalStatus } from './state.ts';

const DECIDED: Record<Exclude<ProposalStatus, 'open'>, string> = { adopted: 'inked in', setAside: 'set aside', withdrawn: 'taken back' };

/**
 * The open proposal of that id, or why nothing can be done to it: LOCKED, UNKNOWN_PROPOSAL, ALREADY_DECIDED.
 * The first decision in the log wins; whatever comes after it is refused here, so deciding and voting are monotone.
 * Example: `openProposal(state, input.proposal)`.
 */
export function openProposal(state: AgreementState, id: string): { ok: true; proposal: Proposal } | ReturnType<typeof refused> {
  const proposal = state.proposals[id];
  if (!proposal) return refused('UNKNOWN_PROPOSAL');
  if (proposal.status !== 'open') return refused('ALREADY_DECIDED', { status: DECIDED[proposal.status] });
  return state.locked ? refused('LOCKED') : { ok: true, proposal };
}

/** As `openProposal`, and NOT_YOURS unless `by` made it. Example: `ownOpenProposal(state, input.proposal, by)`. */
export function ownOpenProposal(state: AgreementState, id: string, by: Actor): ReturnType<typeof openProposal> {
  const found = openProposal(state, id);
  if (found.ok && found.proposal.proposed.by !== by.id) return refused('NOT_YOURS', { owner: found.proposal.proposed.name });
  return found;
}
