import { STAGES, type AgreementState, type Stage } from '../agreement/state.ts';
import { peopleIn } from '../agreement/seating.ts';
import type { SectionView } from '../agreement/wire/http.ts';
import { daysBetween } from './days.ts';
import type { Deadline } from './deadlines.ts';

/** The next thing that is due of a part. */
export interface Due extends Deadline {
  /** Days left; negative: days late. */
  days: number;
}

interface Who {
  id: string;
  name: string;
}

/** Whose turn it is with a part. */
export type WaitedFor =
  | { turn: 'nobody' }
  | { turn: 'librarian' }
  /** The librarian gives the part to a section first, or says who leads it. */
  | { turn: 'noSection' }
  | { turn: 'noPrincipal' }
  | { turn: 'principal'; principal: Who }
  /** Who has still to vote, front to back; the principal decides afterwards. */
  | { turn: 'players'; players: Who[]; principal: Who | null };

/**
 * The earliest deadline a part has not met, by the stages that still lie before it; null when nothing more is due. A day is over at its end: on
 * the day itself a part is not late. `today`: ISO day.
 * Example: a pulled part five days after "with the principal" was due has `{ stage: 'withPrincipal', days: -5 }`.
 */
export function nextDue(stage: Stage, deadlines: readonly Deadline[], today: string): Due | null {
  const ahead = deadlines.filter((deadline) => STAGES.indexOf(deadline.stage) > STAGES.indexOf(stage));
  const next = [...ahead].sort((a, b) => (a.date < b.date ? -1 : a.date > b.date ? 1 : 0))[0];
  return next ? { ...next, days: daysBetween(today, next.date) } : null;
}

/**
 * The players of a section who have not voted on some open slip, front to back. Whoever lays a slip has spoken for it, one vote in any of its
 * measures counts, and the principal decides instead of voting.
 * Example: with one open slip by Mona in a section of Ilya (principal), Mona and Jon it is [Jon].
 */
export function yetToVote({ proposals }: Pick<AgreementState, 'proposals'>, section: Pick<SectionView, 'seats' | 'principal'>): Who[] {
  const open = Object.values(proposals).filter(({ status }) => status === 'open');
  const players = peopleIn(section).filter(({ id }) => id !== section.principal?.id);
  return players.filter(({ id }) => open.some((slip) => slip.proposed.by !== id && !Object.values(slip.votes).some((votes) => id in votes)));
}

/**
 * Who has to do something next for a part to come further: its principal while it is pulled or with them, the players who have not voted while
 * it is round the section and then the principal, the librarian once it is inked in. `section`: as it sits in the part's programme.
 * Source: order of work, common practice, no source. Example: an inked-in part waits for the librarian.
 */
export function waitedFor(state: Pick<AgreementState, 'stage' | 'proposals'>, section: Pick<SectionView, 'seats' | 'principal'> | null): WaitedFor {
  if (state.stage === 'onStands') return { turn: 'nobody' };
  if (state.stage === 'inkedIn' || state.stage === 'printed') return { turn: 'librarian' };
  if (section === null) return { turn: 'noSection' };
  const players = state.stage === 'roundSection' ? yetToVote(state, section) : [];
  const { principal } = section;
  if (players.length) return { turn: 'players', players, principal };
  return principal ? { turn: 'principal', principal } : { turn: 'noPrincipal' };
}
