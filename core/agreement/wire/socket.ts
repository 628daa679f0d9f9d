import { z } from 'zod';
import type { LogEntry } from '../event.ts';
import type { Refusal } from '../refusal.ts';

/** Rises with every change of a message or an operation's input; `tests/core/agreement/protocol.test.ts` holds the hash. */
export const PROTOCOL = 4;

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

/** `retry`: the store is away; the same message again later. */
export type HelloAnswer = { ok: true } | { ok: false; refusal: Refusal } | { ok: false; retry: true; text: string };
/** The log after `after`, and the head. A long log comes in several answers: ask again while `entries` ends before `head`. */
export type FollowAnswer = { ok: true; head: number; entries: LogEntry[] } | { ok: false; refusal: Refusal } | { ok: false; retry: true; text: string };
export type SubmitAnswer = { ok: true; entry: LogEntry } | { ok: false; refusal: Refusal } | { ok: false; retry: true; text: string };

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
