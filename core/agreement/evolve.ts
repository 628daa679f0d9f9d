import type { AgreementEvent, LogEntry } from './event.ts';
import { inkIn } from './ink.ts';
import { letterOf } from './letter.ts';
import type { AgreementState, Proposal, ProposalStatus, Stamp } from './state.ts';

type Event<Type extends AgreementEvent['type']> = Extract<AgreementEvent, { type: Type }>;

function withProposal(state: AgreementState, proposal: Proposal): AgreementState {
  return { ...state, proposals: { ...state.proposals, [proposal.id]: proposal } };
}

function nextLetter(state: AgreementState, measure: number): { letter: string; letters: Record<string, number> } {
  const given = state.letters[measure] ?? 0;
  return { letter: letterOf(given), letters: { ...state.letters, [measure]: given + 1 } };
}

function contentOf({ from, to, seats, why, marks }: Event<'proposed' | 'revised'>): Pick<Proposal, 'from' | 'to' | 'seats' | 'why' | 'marks'> {
  return { from, to, seats, why, marks };
}

function proposed(state: AgreementState, event: Event<'proposed'>, stamp: Stamp): AgreementState {
  const { letter, letters } = nextLetter(state, event.from);
  return withProposal({ ...state, letters }, { id: event.id, letter, proposed: stamp, ...contentOf(event), revision: 1, status: 'open', decided: null, votes: {} });
}

function revised(state: AgreementState, event: Event<'revised'>): AgreementState {
  const before = state.proposals[event.id]!;
  const { letter, letters } = before.from === event.from ? { letter: before.letter, letters: state.letters } : nextLetter(state, event.from);
  return withProposal({ ...state, letters }, { ...before, ...contentOf(event), letter, revision: before.revision + 1, votes: {} });
}

function decided(state: AgreementState, id: string, status: ProposalStatus, why: string, stamp: Stamp): AgreementState {
  return withProposal(state, { ...state.proposals[id]!, status, decided: { ...stamp, why } });
}

function voted(state: AgreementState, { proposal: id, measure, vote }: Event<'voteCast'>, by: string): AgreementState {
  const proposal = state.proposals[id]!;
  const { [by]: _, ...others } = proposal.votes[measure] ?? {};
  return withProposal(state, { ...proposal, votes: { ...proposal.votes, [measure]: vote ? { ...others, [by]: vote } : others } });
}

function adopted(state: AgreementState, { proposal: id, why, measures }: Event<'adopted'>, stamp: Stamp): AgreementState {
  const { seats, marks, why: reason } = state.proposals[id]!;
  return { ...decided(state, id, 'adopted', why, stamp), ink: inkIn(state.ink, { proposal: id, why: reason, seats, marks, measures }, stamp) };
}

function muted(state: AgreementState, { id, rule, place, reason, fingerprint }: Event<'muted'>, stamp: Stamp): AgreementState {
  // A new mute of a place takes over from the one whose music has changed since.
  const others = Object.entries(state.mutes).filter(([, mute]) => mute.rule !== rule || mute.place !== place);
  return { ...state, mutes: { ...Object.fromEntries(others), [id]: { id, rule, place, reason, fingerprint, muted: stamp } } };
}

function unmuted(state: AgreementState, id: string): AgreementState {
  const { [id]: _, ...mutes } = state.mutes;
  return { ...state, mutes };
}

function after(state: AgreementState, event: AgreementEvent, stamp: Stamp): AgreementState {
  switch (event.type) {
    case 'proposed':
      return proposed(state, event, stamp);
    case 'revised':
      return revised(state, event);
    case 'withdrawn':
      return decided(state, event.id, 'withdrawn', event.why, stamp);
    case 'setAside':
      return decided(state, event.proposal, 'setAside', event.why, stamp);
    case 'adopted':
      return adopted(state, event, stamp);
    case 'voteCast':
      return voted(state, event, stamp.by);
    case 'commented': {
      const { id, measure, proposal, answers, text } = event;
      return { ...state, comments: { ...state.comments, [id]: { id, made: stamp, measure, proposal, answers, text, resolved: null } } };
    }
    case 'commentResolved':
      return { ...state, comments: { ...state.comments, [event.id]: { ...state.comments[event.id]!, resolved: stamp } } };
    case 'muted':
      return muted(state, event, stamp);
    case 'unmuted':
      return unmuted(state, event.id);
    case 'movedOn':
      return { ...state, stage: event.stage };
    case 'locked':
      return { ...state, locked: true };
    case 'unlocked':
      return { ...state, locked: false };
    default:
      throw new Error(`Unknown event ${JSON.stringify(event satisfies never)}.`);
  }
}

/**
 * What is true after one more row of the log. Shares everything unchanged with `state`, which is left as it was.
 * Throws when the row is not the next one: a gap is to be caught up, never skipped.
 * Invariants: the result's `seq` is the row's; equal states and rows give equal results.
 * Example: `evolve(emptyState(), firstRow).seq` is 1.
 */
export function evolve(state: AgreementState, entry: LogEntry): AgreementState {
  if (entry.seq !== state.seq + 1) throw new Error(`Row ${entry.seq} does not follow row ${state.seq}.`);
  const stamp: Stamp = { by: entry.by, name: entry.byName, at: entry.at, seq: entry.seq };
  return { ...entry.events.reduce((now, event) => after(now, event, stamp), state), seq: entry.seq };
}
