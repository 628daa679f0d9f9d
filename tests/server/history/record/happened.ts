import type { LogEntry } from '../../../../core/agreement/event.ts';

/** Milliseconds on the machine's own steady clock, the same in every process. */
type Time = number;

/** Who takes part and what they write in; the first line of a record. */
export interface Cast {
  k: 'cast';
  seed: number;
  servers: number;
  redis: boolean;
  workers: number;
  people: { id: string; ensemble: string }[];
  parts: { id: string; ensemble: string }[];
}

/** A proposal as far as an independent reader of the log can tell. */
export interface Slip {
  status: string;
  revision: number;
  votes: Record<string, Record<string, string>>;
}

/** One line of a recorded history. `page`: one opening of a page, from load to reload. */
export type Happened =
  | Cast
  /** An id was chosen; from here on its row may be in the log. */
  | { k: 'written'; t: Time; person: string; part: string; op: string; name: string }
  /** The pencil has it: it must not be lost any more. */
  | { k: 'kept'; t: Time; op: string }
  | { k: 'acknowledged'; t: Time; op: string; part: string; seq: number }
  /** `sent` false: refused by the page itself. */
  | { k: 'refused'; t: Time; op: string; part: string; code: string; sent: boolean }
  | { k: 'opened'; t: Time; page: string; person: string; part: string; seq: number; waiting: string[] }
  | { k: 'left'; t: Time; page: string; person: string; part: string; waiting: string[] }
  /** Rows as they were taken, in order: `from` is the number of the first, `ops` the beginnings of their ids. */
  | { k: 'rows'; t: Time; page: string; part: string; from: number; ops: string[] }
  /** The first time somebody was sent a row of this part by this person, whatever became of it. */
  | { k: 'heard'; t: Time; person: string; part: string; by: string }
  /** Somebody asked for a part of another ensemble, and how many rows (or lines of its content) came. */
  | { k: 'pried'; t: Time; person: string; part: string; how: string; got: number }
  | { k: 'status'; t: Time; page: string; person: string; status: string }
  /** As a page stood at the end, when all was quiet. `settled`: shows what is confirmed and nothing else. */
  | { k: 'final'; page: string; person: string; part: string; seq: number; state: string; settled: boolean; waiting: string[]; status: string }
  /** An acknowledged operation, sent again by hand: both answers as text. */
  | { k: 'resent'; op: string; first: string; again: string }
  /** Rows `from` to `to` of the part were committed while the person had no seat, or was signed out. */
  | { k: 'shutOut'; why: 'unseated' | 'signedOut'; person: string; part: string; from: number; to: number }
  /** How long the pages of somebody who was signed out kept their line, and how long at most they might. */
  | { k: 'cutOff'; person: string; ms: number; most: number }
  | { k: 'oldPage'; t: Time; op: string; part: string; status: string; waiting: string[] }
  | { k: 'fault'; t: Time; kind: string; at: string }
  /** A server or worker that ended by itself: nobody had killed it. */
  | { k: 'fell'; t: Time; name: string; said: string[] }
  /** Work for the line of long jobs that was taken in, and how often it had its effect. */
  | { k: 'job'; id: string; effects: number; told: string }
  | { k: 'log'; part: string; rows: (LogEntry & { ensemble: string })[] }
  | { k: 'turnedDown'; part: string; ops: { op: string; code: string }[] }
  | { k: 'snapshot'; part: string; seq: number; state: string }
  /** What a server says of a part at the end. */
  | { k: 'shown'; part: string; head: number; slips: Record<string, Slip>; state: string };

export type Of<Kind extends Happened['k']> = Extract<Happened, { k: Kind }>;
