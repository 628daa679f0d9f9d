import type { Mark } from '../music/mark.ts';
import type { Seats } from '../music/seat.ts';
import type { InkMoved } from './ink.ts';
import type { Mention, Stage, Vote } from './state.ts';

/** What has happened. Events are facts: never changed, only followed by others. */
export type AgreementEvent =
  | { type: 'proposed'; id: string; from: number; to: number; seats: Seats; why: string; marks: Mark[] }
  | { type: 'revised'; id: string; from: number; to: number; seats: Seats; why: string; marks: Mark[] }
  | { type: 'withdrawn'; id: string; why: string }
  | { type: 'voteCast'; proposal: string; measure: number; vote: Vote | null }
  /** `measures`: ordinal of each mark's measure, in the order of the proposal's marks, as the part was then. */
  | { type: 'adopted'; proposal: string; why: string; measures: number[] }
  | { type: 'setAside'; proposal: string; why: string }
  /** The marks of an earlier row stand again. `ink`: places in the list of everything ever inked in, as it was then. */
  | { type: 'restored'; to: number; why: string; back: InkMoved[]; aside: InkMoved[] }
  | { type: 'commented'; id: string; measure: number; proposal: string | null; answers: string | null; text: string; mentions?: Mention[] }
  | { type: 'commentResolved'; id: string }
  | { type: 'muted'; id: string; rule: string; place: string; reason: string; fingerprint: string | null }
  | { type: 'unmuted'; id: string }
  | { type: 'movedOn'; stage: Stage }
  | { type: 'locked' }
  | { type: 'unlocked' }
  /** A corrected edition was laid over: the ordinal that each measure has now, that of measure 1 first. Written by the library, no operation of a person. */
  | { type: 'laidOver'; measures: number[] };

/** One row of a part's log. */
export interface LogEntry {
  /** Dense from 1. */
  seq: number;
  /** Chosen by the client before sending; the same id is the same operation, however often it arrives. */
  operation: string;
  name: string;
  input: unknown;
  events: AgreementEvent[];
  by: string;
  byName: string;
  /** ISO 8601, UTC, by the committing server's clock. */
  at: string;
}
