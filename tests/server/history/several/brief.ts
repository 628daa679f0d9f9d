import type { Role } from '../../../../core/agreement/people.ts';
import type { Part } from '../../../../core/music/part.ts';
import type { SeatId } from '../../../../core/music/seat.ts';

/** Somebody of a roomful: who they are, which door they use, what lies on their stand. */
export interface PersonBrief {
  id: string;
  name: string;
  cookie: string;
  address: string;
  roles: Role[];
  seat: SeatId | null;
  leads: boolean;
  /** Parts they have open, and one of another ensemble that they must never reach. */
  parts: string[];
  foreign: string;
}

/** What a process full of people is told when it starts; the same after every kill. */
export interface RoomBrief {
  seed: number;
  record: string;
  queues: string;
  people: PersonBrief[];
  parts: Record<string, Part>;
  seats: SeatId[];
  /** Milliseconds between two acts of one person, from and up to. */
  pause: [number, number];
  /** As many unanswered operations a person has on a part at most. */
  ahead: number;
}

export type ToRoom = { say: 'reload'; person: string } | { say: 'cookie'; person: string; cookie: string } | { say: 'rest' } | { say: 'end' };
export type FromRoom =
  | { say: 'ready' }
  | { say: 'acknowledged'; count: number; sample: { op: string; part: string; seq: number; person: string } | null }
  | { say: 'status'; person: string; status: string; t: number }
  | { say: 'rested'; quiet: boolean }
  | { say: 'ended' };
