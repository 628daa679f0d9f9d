import { randomUUID } from 'node:crypto';
import type { OperationInput, OperationName } from '../../../core/agreement/registry.ts';
import type { AgreementState } from '../../../core/agreement/state.ts';
import type { Part } from '../../../core/music/part.ts';
import type { Chance } from '../../support/chance.ts';

export type Act = { [Name in OperationName]: { name: Name; input: OperationInput<Name> } }[OperationName];

/** What a member of the section might do next, given what they see. Often it collides with what another does at the same time. */
export function nextAct(state: AgreementState, part: Part, seats: readonly string[], leads: boolean, luck: Chance): Act {
  const open = Object.values(state.proposals).filter((proposal) => proposal.status === 'open');
  const proposal = open.length ? luck.pick(open) : null;
  const roll = luck.next();
  if (!proposal || roll < 0.3) return propose(part, seats, luck);
  const { id, revision, from } = proposal;
  if (roll < 0.55) return { name: 'castVote', input: { proposal: id, revision, measure: from, vote: luck.pick(['for', 'against', null]) } };
  if (leads && roll < 0.72) return { name: 'adopt', input: { proposal: id, revision, why: 'Agreed.' } };
  if (leads && roll < 0.8) return { name: 'setAside', input: { proposal: id, why: 'Not this time.' } };
  if (roll < 0.85) return { name: 'withdraw', input: { proposal: id, why: 'Thought better of it.' } };
  return { name: 'comment', input: { id: randomUUID(), measure: from, proposal: luck.happens(0.5) ? id : null, answers: null, text: 'Shall we try it slower?' } };
}

function propose(part: Part, seats: readonly string[], luck: Chance): Act {
  const measure = luck.pick(part.measures.filter((one) => one.notes.some((note) => !note.rest)));
  const note = luck.pick(measure.notes.filter((one) => !one.rest));
  const value = luck.pick([{ kind: 'finger' as const, finger: luck.pick([0, 1, 2, 3, 4] as const) }, { kind: 'bow' as const, bow: luck.pick(['up', 'down'] as const) }, { kind: 'retake' as const }]);
  return { name: 'propose', input: { id: randomUUID(), from: measure.ordinal, to: measure.ordinal, seats: luck.happens(0.7) ? 'all' : [luck.pick(seats)], why: 'It lies better in the hand.', marks: [{ note: note.id, value }] } };
}
