import type { Role } from '../people.ts';
import type { AgreementState, Comment, Proposal, ProposalStatus } from '../state.ts';

interface AtSlip {
  /** Ordinal of the measure it leads to. */
  measure: number;
  proposal: string;
  /** As it is called: first measure and letter. */
  from: number;
  letter: string;
  who: string;
  seq: number;
}

/** Something of one part that waits for a person. */
export type Waiting =
  | (AtSlip & { kind: 'vote' })
  | { kind: 'named'; measure: number; proposal: string | null; who: string; text: string; seq: number }
  | (AtSlip & { kind: 'talk'; text: string })
  | (AtSlip & { kind: 'decided'; status: Exclude<ProposalStatus, 'open'>; mine: boolean });

export interface Reader {
  id: string;
  roles: readonly Role[];
}

const names = ({ mentions }: Comment, person: string): boolean => mentions?.some((mention) => mention.person === person) ?? false;

const atSlip = (slip: Proposal, measure: number, who: string, seq: number): AtSlip => ({ measure, proposal: slip.id, from: slip.from, letter: slip.letter, who, seq });

function votes({ proposals }: AgreementState, { id, roles }: Reader): Waiting[] {
  if (!roles.some((role) => role !== 'librarian')) return [];
  const mine = (slip: Proposal) => Object.values(slip.votes).some((votes) => id in votes);
  return Object.values(proposals)
    .filter((slip) => slip.status === 'open' && slip.proposed.by !== id && !mine(slip))
    .map((slip) => ({ kind: 'vote', ...atSlip(slip, slip.from, slip.proposed.name, slip.proposed.seq) }));
}

/** One thread: what hangs on one slip, or on one measure itself. */
const together = (a: Comment, b: Comment): boolean => (a.proposal ?? a.measure) === (b.proposal ?? b.measure);

function talk({ comments, proposals }: AgreementState, { id }: Reader, since: number): Waiting[] {
  const all = Object.values(comments);
  const answered = (comment: Comment) => all.some((other) => other.made.by === id && other.made.seq > comment.made.seq && together(comment, other));
  return all.flatMap((comment): Waiting[] => {
    const { made, measure, proposal, text, resolved } = comment;
    if (made.by === id || resolved || answered(comment)) return [];
    const slip = proposal === null ? undefined : proposals[proposal];
    const fresh = made.seq > since;
    if (names(comment, id) && (fresh || slip === undefined || slip.status === 'open')) return [{ kind: 'named', measure, proposal, who: made.name, text, seq: made.seq }];
    return fresh && slip?.proposed.by === id ? [{ kind: 'talk', ...atSlip(slip, measure, made.name, made.seq), text }] : [];
  });
}

function decisions({ proposals }: AgreementState, { id }: Reader, since: number): Waiting[] {
  return Object.values(proposals).flatMap((slip): Waiting[] => {
    const { decided, status } = slip;
    if (!decided || status === 'open' || decided.by === id || decided.seq <= since) return [];
    return [{ kind: 'decided', ...atSlip(slip, slip.from, decided.name, decided.seq), status, mine: slip.proposed.by === id }];
  });
}

/** In the order they are told. */
export const KINDS = ['named', 'vote', 'talk', 'decided'] as const;

/**
 * What of a part waits for a person: talk that names them and that they have not answered, open slips they have not voted on, new talk on their slips, and
 * decisions of others. `since`: the last row of the log they have seen; talk on slips and decisions are told from there on. By kind, then by measure.
 * Example: an open slip of somebody else's is one `vote` until they vote in any of its measures.
 */
export function waitsFor(state: AgreementState, reader: Reader, since: number): Waiting[] {
  const all = [...talk(state, reader, since), ...votes(state, reader), ...decisions(state, reader, since)];
  return all.sort((a, b) => KINDS.indexOf(a.kind) - KINDS.indexOf(b.kind) || a.measure - b.measure || a.seq - b.seq);
}
