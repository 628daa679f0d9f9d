import type { Chance } from '../../../../support/chance.ts';
import type { Proxy } from '../../proxy.ts';
import type { Note } from '../../record/record.ts';
import type { SignedIn } from '../../library.ts';
import type { House } from '../furnish.ts';
import type { Premises, Station } from '../premises.ts';
import type { Room } from '../rooms.ts';

/** One way for something to go wrong. `often`: cards in the deck. `strike` says what it hit, and when it is over; null: not possible just now. */
export interface Misfortune {
  kind: string;
  often: number;
  strike(): { at: string; over: Promise<unknown> } | null;
}

/** Everything that a misfortune can reach. */
export interface Scene {
  premises: Premises;
  houses: House[];
  rooms: Room[];
  /** Each person's own way in. */
  doors: Map<string, Proxy>;
  /** How each person comes in now; changes when they sign in anew. */
  signedIn: Map<string, SignedIn>;
  /** What each person's page last said of its line. */
  lines: Map<string, { status: string; t: number }>;
  luck: Chance;
  note: Note;
  /** A server that runs and answers, by chance. */
  address(): string;
  /** Servers that nothing happens to just now. */
  busy: Set<Station>;
  /** People that something happens to just now. */
  away: Set<string>;
  /** A small disk that can be filled; null where there is none. */
  disk: string | null;
  heads(): Promise<Map<string, number>>;
  troubles: Troubles;
}

/** When something was wrong that may keep a server from its beat. */
export interface Troubles {
  during<T>(work: Promise<T>): Promise<T>;
  /** Milliseconds between two moments in which something was wrong or had just been. */
  within(from: number, to: number): number;
}

/** After a database or a line came back a server needs this long to be itself again. Chosen, not measured. */
const AFTER = 6000;

export function createTroubles(now: () => number): Troubles {
  const spans: { from: number; to: number }[] = [];
  return {
    async during(work) {
      const span = { from: now(), to: Number.POSITIVE_INFINITY };
      spans.push(span);
      try {
        return await work;
      } finally {
        span.to = now() + AFTER;
      }
    },
    within(from, to) {
      const inside = spans.map((span) => ({ from: Math.max(from, span.from), to: Math.min(to, span.to) })).filter((span) => span.to > span.from).sort((a, b) => a.from - b.from);
      let reached = from;
      let sum = 0;
      for (const span of inside) {
        sum += Math.max(0, span.to - Math.max(reached, span.from));
        reached = Math.max(reached, span.to);
      }
      return sum;
    },
  };
}

/** One of the servers that may be struck; the last that is left may not, so that somebody goes on answering. */
export function victim({ premises, busy, luck }: Scene): Station | null {
  const free = premises.stations.filter((station) => !busy.has(station) && station.server.running);
  return free.length < 2 ? null : luck.pick(free);
}

/** While the work lasts, nothing else happens to this one. */
export async function held<T>(set: Set<T>, one: T, work: () => Promise<unknown>): Promise<void> {
  set.add(one);
  try {
    await work();
  } finally {
    set.delete(one);
  }
}
