import type { LogEntry } from '../../core/agreement/event.ts';
import { take } from '../../core/agreement/replay.ts';
import type { AgreementState } from '../../core/agreement/state.ts';
import type { Refused } from '../../core/agreement/wire/socket.ts';
import { pauseBefore, type Clock, type Timing } from './clock.ts';
import type { Connection } from './connection.ts';

export interface Follower {
  state(): AgreementState;
  /** True when every row the server has spoken of is in `state`. */
  caughtUp(): boolean;
  /** Rows that arrived from anywhere, in order of `seq`. */
  took(entries: readonly LogEntry[]): void;
  /** The server's log reaches to `seq`. */
  headIs(seq: number): void;
  /** Ask for everything after the last row; asks again until it has it or the line is cut. */
  catchUp(): void;
  cut(): void;
  /** Start anew from a state fetched otherwise. */
  restart(state: AgreementState): void;
}

interface Options {
  part: string;
  connection: Connection;
  clock: Clock;
  timing: Timing;
  state: AgreementState;
  /** New rows are in `state`. */
  onRows(entries: readonly LogEntry[]): void;
  onCaughtUp(): void;
  onRefused(answer: Refused): void;
  /** The server's log is shorter than ours: it is not the log we followed. */
  onAnotherLog(): void;
}

/** The confirmed state of one part: takes rows in order, and where one is missing asks for the rest. Pushed rows are hints only. */
export function follow(options: Options): Follower {
  const { part, connection, clock, timing } = options;
  let state = options.state;
  let head = state.seq;
  let caughtUp = false;
  /** Rises when the line is cut, so that answers to earlier questions start nothing. */
  let round = 0;
  let asking = false;
  let cancel = () => {};

  const took = (entries: readonly LogEntry[]) => {
    const result = take(state, entries);
    state = result.state;
    head = Math.max(head, entries.at(-1)?.seq ?? 0);
    if (result.taken.length) options.onRows(result.taken);
    if (result.gap) catchUp();
  };

  const ask = async (attempt: number): Promise<void> => {
    const mine = round;
    asking = true;
    const before = state.seq;
    const answer = await connection.ask('follow', { part, after: before }).catch(() => null);
    if (mine !== round) return;
    asking = false;
    if (answer && 'refusal' in answer) return options.onRefused(answer);
    if (answer?.ok) {
      if (answer.head < before) return options.onAnotherLog();
      head = Math.max(head, answer.head);
      const result = take(state, answer.entries);
      state = result.state;
      if (result.taken.length) options.onRows(result.taken);
      if (state.seq >= head) {
        caughtUp = true;
        return options.onCaughtUp();
      }
    }
    const moved = state.seq > before;
    asking = true;
    cancel = clock.after(moved ? 0 : pauseBefore(attempt, timing), () => void ask(moved ? 0 : attempt + 1));
  };

  const catchUp = () => {
    caughtUp = false;
    if (!asking && connection.status() === 'live') void ask(0);
  };

  const cut = () => {
    round += 1;
    asking = false;
    caughtUp = false;
    cancel();
  };

  return {
    state: () => state,
    caughtUp: () => caughtUp,
    took,
    headIs(seq) {
      head = Math.max(head, seq);
      if (head > state.seq) catchUp();
    },
    catchUp,
    cut,
    restart(next) {
      cut();
      state = next;
      head = next.seq;
      catchUp();
    },
  };
}
