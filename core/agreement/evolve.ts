import { change, type Draft } from './draft.ts';
import type { AgreementEvent, LogEntry } from './event.ts';
import { inkInto } from './ink.ts';
import { layOver } from './layOver.ts';
import { letterOf } from './letter.ts';
import type { AgreementState, Proposal, ProposalStatus, Stage, Stamp } from './state.ts';

type Event<Type extends AgreementEvent['type']> = Extract<AgreementEvent, { type: Type }>;

function nextLetter(draft: Draft, measure: number): string {
  const letters = change(draft, 'letters');
  const given = letters[measure] ?? 0;
  letters[measure] = given + 1;
  return letterOf(given);
}

function contentOf({ from, to, seats, why, marks }: Event<'proposed' | 'revised'>): Pick<Proposal, 'from' | 'to' | 'seats' | 'why' | 'marks'> {
  return { from, to, seats, why, marks };
}

function proposed(draft: Draft, event: Event<'proposed'>, stamp: Stamp): void {
  const letter = nextLetter(draft, event.from);
  change(draft, 'proposals')[event.id] = { id: event.id, letter, proposed: stamp, ...contentOf(event), revision: 1, status: 'open', decided: null, votes: {} };
}

function revised(draft: Draft, event: Event<'revised'>): void {
  const proposals = change(draft, 'proposals');
  const before = proposals[event.id]!;
  const letter = before.from === event.from ? before.letter : nextLetter(draft, event.from);
  proposals[event.id] = { ...before, ...contentOf(event), letter, revision: before.revision + 1, votes: {} };
}

function decided(draft: Draft, id: string, status: ProposalStatus, why: string, stamp: Stamp): void {
  const proposals = change(draft, 'proposals');
  proposals[id] = { ...proposals[id]!, status, decided: { ...stamp, why } };
}

function adopted(draft: Draft, { proposal: id, why, measures }: Event<'adopted'>, stamp: Stamp): void {
  decided(draft, id, 'adopted', why, stamp);
  const { seats, marks, why: reason } = draft.state.proposals[id]!;
  inkInto(change(draft, 'ink'), { proposal: id, why: reason, seats, marks, measures }, stamp);
}

function restored(draft: Draft, { back, aside, why }: Event<'restored'>, stamp: Stamp): void {
  const ink = change(draft, 'ink');
  for (const { ink: place } of aside) ink[place] = { ...ink[place]!, superseded: { ...stamp, proposal: ink[place]!.proposal, why } };
  for (const { ink: place, measure } of back) ink.push({ ...ink[place]!, measure, inked: stamp, superseded: null });
}

function voted(draft: Draft, { proposal: id, measure, vote }: Event<'voteCast'>, by: string): void {
  const proposals = change(draft, 'proposals');
  const proposal = proposals[id]!;
  const { [by]: _, ...others } = proposal.votes[measure] ?? {};
  proposals[id] = { ...proposal, votes: { ...proposal.votes, [measure]: vote ? { ...others, [by]: vote } : others } };
}

function commented(draft: Draft, { type: _, ...said }: Event<'commented'>, stamp: Stamp): void {
  change(draft, 'comments')[said.id] = { ...said, made: stamp, resolved: null };
}

function settled(draft: Draft, id: string, stamp: Stamp): void {
  const comments = change(draft, 'comments');
  comments[id] = { ...comments[id]!, resolved: stamp };
}

function muted(draft: Draft, { id, rule, place, reason, fingerprint }: Event<'muted'>, stamp: Stamp): void {
  const mutes = change(draft, 'mutes');
  // A new mute of a place takes over from the one whose music has changed since.
  for (const mute of Object.values(mutes)) if (mute.rule === rule && mute.place === place) delete mutes[mute.id];
  mutes[id] = { id, rule, place, reason, fingerprint, muted: stamp };
}

function movedOn({ state }: Draft, stage: Stage, stamp: Stamp): void {
  state.stage = stage;
  if (stage === 'onStands') state.handedOut = stamp;
  else delete state.handedOut;
}

function happen(draft: Draft, event: AgreementEvent, stamp: Stamp): void {
  switch (event.type) {
    case 'proposed':
      return proposed(draft, event, stamp);
    case 'revised':
      return revised(draft, event);
    case 'withdrawn':
      return decided(draft, event.id, 'withdrawn', event.why, stamp);
    case 'setAside':
      return decided(draft, event.proposal, 'setAside', event.why, stamp);
    case 'adopted':
      return adopted(draft, event, stamp);
    case 'restored':
      return restored(draft, event, stamp);
    case 'voteCast':
      return voted(draft, event, stamp.by);
    case 'commented':
      return commented(draft, event, stamp);
    case 'commentResolved':
      return settled(draft, event.id, stamp);
    case 'muted':
      return muted(draft, event, stamp);
    case 'unmuted':
      delete change(draft, 'mutes')[event.id];
      return;
    case 'movedOn':
      return movedOn(draft, event.stage, stamp);
    case 'locked':
      draft.state.locked = true;
      return;
    case 'unlocked':
      draft.state.locked = false;
      return;
    case 'laidOver':
      return layOver(draft, event.measures);
    default:
      throw new Error(`Unknown event ${JSON.stringify(event satisfies never)}.`);
  }
}

/**
 * What is true after more rows of the log. Shares everything unchanged with `state`, which is left as it was; each list is copied once however
 * many rows there are. Throws when a row is not the next one: a gap is to be caught up, never skipped.
 * Invariants: the result's `seq` is the last row's; equal states and rows give equal results; row by row or all at once is the same.
 * Example: `evolveAll(emptyState(), rows).seq === rows.length`.
 */
export function evolveAll(state: AgreementState, entries: readonly LogEntry[]): AgreementState {
  const draft: Draft = { state: { ...state }, own: new Set() };
  for (const entry of entries) {
    if (entry.seq !== draft.state.seq + 1) throw new Error(`Row ${entry.seq} does not follow row ${draft.state.seq}.`);
    const stamp: Stamp = { by: entry.by, name: entry.byName, at: entry.at, seq: entry.seq };
    for (const event of entry.events) happen(draft, event, stamp);
    draft.state.seq = entry.seq;
  }
  return draft.state;
}

/** `evolveAll` for one row. Example: `evolve(emptyState(), firstRow).seq` is 1. */
export function evolve(state: AgreementState, entry: LogEntry): AgreementState {
  return evolveAll(state, [entry]);
}
