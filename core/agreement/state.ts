import type { Mark } from '../music/mark.ts';
import type { SeatId, Seats } from '../music/seat.ts';

export type ProposalStatus = 'open' | 'adopted' | 'setAside' | 'withdrawn';
export type Vote = 'for' | 'against';
/** How far a part has come, in the librarian's words. */
export const STAGES = ['pulled', 'withPrincipal', 'roundSection', 'inkedIn', 'printed', 'onStands'] as const;
export type Stage = (typeof STAGES)[number];

/** Who did something and when: stamped by the committing server. `at` is ISO 8601 in UTC. */
export interface Stamp {
  by: string;
  name: string;
  at: string;
  seq: number;
}

export interface Proposal {
  id: string;
  /** Slip letter within its first measure: a, b, c ... never used twice. */
  letter: string;
  proposed: Stamp;
  /** First and last measure ordinal it covers. */
  from: number;
  to: number;
  seats: Seats;
  why: string;
  marks: Mark[];
  /** Counts its revisions from 1; votes cast for an earlier revision are kept in the log and no longer counted. */
  revision: number;
  status: ProposalStatus;
  decided: (Stamp & { why: string }) | null;
  /** measure ordinal -> person id -> vote. */
  votes: Record<string, Record<string, Vote>>;
}

/** A person named after @ in what is said, by the name they had then. */
export interface Mention {
  person: string;
  name: string;
}

export interface Comment {
  id: string;
  made: Stamp;
  measure: number;
  /** Hangs on a slip, or on the measure itself. */
  proposal: string | null;
  /** What it answers. */
  answers: string | null;
  text: string;
  /** Who is named in it. Absent where nobody is. */
  mentions?: Mention[];
  resolved: Stamp | null;
}

/** A mark the section stands by, and what became of it. */
export interface StandingMark {
  mark: Mark;
  /** Seats it holds for. */
  seats: Seats;
  measure: number;
  proposal: string;
  /** The proposal's sentence. */
  why: string;
  inked: Stamp;
  superseded: (Stamp & { proposal: string; why: string }) | null;
}

/** A finding put to rest: of one place (rule + place key), or of a whole rule (place "*"). */
export interface Mute {
  id: string;
  rule: string;
  place: string;
  reason: string;
  muted: Stamp;
  /** Fingerprint of the music and marks there when muted; null for a whole rule. */
  fingerprint: string | null;
}

/** What a section has agreed about one part: everything that `evolve` builds from the log. Plain JSON. */
export interface AgreementState {
  seq: number;
  stage: Stage;
  locked: boolean;
  proposals: Record<string, Proposal>;
  comments: Record<string, Comment>;
  mutes: Record<string, Mute>;
  /** All marks ever inked in, in order; those not superseded are in force. */
  ink: StandingMark[];
  /** Letters given so far, by measure. */
  letters: Record<string, number>;
  /** When the part went onto the stands. Absent before that, and once it was taken from them again. */
  handedOut?: Stamp;
}

/** What the rules need to know of the part besides the log: given by whoever runs them. */
export interface PartFacts {
  measures: number;
  /** note id -> measure ordinal. */
  notes: ReadonlyMap<string, number>;
  seats: readonly SeatId[];
}

export const emptyState = (): AgreementState => ({ seq: 0, stage: 'pulled', locked: false, proposals: {}, comments: {}, mutes: {}, ink: [], letters: {} });
