import { z } from 'zod';
import type { LogEntry } from '../event.ts';
import type { Refusal } from '../refusal.ts';

/** Rises with every change of a message or an operation's input; `tests/core/agreement/protocol.test.ts` holds the hash. */
export const PROTOCOL = 5;

/** client -> server: first message after connecting. */
export const Hello = z.strictObject({ protocol: z.int() });
/** client -> server: follow a part from a known place in its log. */
export const Follow = z.strictObject({ part: z.string(), after: z.int().nonnegative() });
export const Unfollow = z.strictObject({ part: z.string() });
/** client -> server: one operation, by name; the registry holds its input. */
export const Submit = z.strictObject({ part: z.string(), operation: z.uuid(), name: z.string().max(40), input: z.unknown() });
/** client -> server: which measure I look at (ordinal), null when I leave. Kept in memory only. */
export const Looking = z.strictObject({ part: z.string(), measure: z.int().positive().nullable() });

export const CLIENT_MESSAGES = { hello: Hello, follow: Follow, unfollow: Unfollow, submit: Submit, looking: Looking } as const;

/** Why the same message has to come again later. */
export type HeldBy = 'SHELVES_AWAY' | 'SHELVES_FULL' | 'TOO_FAST' | 'SIGNED_OUT';
/** `by` is missing where an older server answers. */
export interface Held {
  ok: false;
  retry: true;
  text: string;
  by?: HeldBy;
}
/** `gone`: who asks does not reach the part, or not any more; nothing is decided about what they wrote. */
export interface Refused {
  ok: false;
  refusal: Refusal;
  gone?: true;
}
/** `person`: as whom the line is open. */
export type HelloAnswer = { ok: true; person?: string } | Refused | Held;
/** The log after `after`, and the head. A long log comes in several answers: ask again while `entries` ends before `head`. */
export type FollowAnswer = { ok: true; head: number; entries: LogEntry[] } | Refused | Held;
export type SubmitAnswer = { ok: true; entry: LogEntry } | Refused | Held;

/** server -> client */
export interface ServerMessages {
  /** New log rows. A hint: a gap is filled by `follow`. */
  logged: { part: string; entries: LogEntry[] };
  /** Sent every few seconds to followers, so that a lost `logged` is noticed. */
  head: { part: string; seq: number };
  /** Everyone who looks at this part now. */
  present: { part: string; people: { id: string; name: string; seat: string | null; measure: number | null }[] };
  /** The part's content, section or seating changed: fetch it again. */
  renewed: { part: string };
}
