import type { LogEntry } from '../../core/agreement/event.ts';
import type { Refusal } from '../../core/agreement/refusal.ts';
import { pauseBefore, type Clock, type Timing } from './clock.ts';
import type { Connection } from './connection.ts';
import { heldBy, type Hindrance } from './hindrance.ts';
import type { Queued } from './queue.ts';

export interface Sender {
  /** Send the first unanswered operation, if the line is up and none is on its way. */
  send(): void;
  cut(): void;
}

interface Options {
  part: string;
  connection: Connection;
  clock: Clock;
  timing: Timing;
  /** The first operation without an answer. */
  next(): Queued | undefined;
  onWritten(operation: string, entry: LogEntry): void;
  onRefused(operation: string, refusal: Refusal): void;
  /** What keeps the first one from being written; null: nothing any more. */
  onHeld(by: Hindrance | null): void;
}

/**
 * Sends operations in the order they were written, one at a time, so that none can overtake another; the same one again, under the same id,
 * until it is answered. A refused one does not hold up the rest.
 */
export function sender({ part, connection, clock, timing, next, onWritten, onRefused, onHeld }: Options): Sender {
  let round = 0;
  let busy = false;
  let cancel = () => {};
  let trust = () => {};

  const attempt = async (count: number): Promise<void> => {
    const one = next();
    busy = one !== undefined && connection.status() === 'live';
    if (!one || !busy) return;
    const mine = round;
    trust = clock.after(timing.patience, () => onHeld('late'));
    const answer = await connection.ask('submit', { part, operation: one.operation, name: one.name, input: one.input }).catch(() => null);
    if (mine !== round) return;
    trust();
    const refused = answer && 'refusal' in answer ? answer : null;
    if (answer?.ok) {
      onHeld(null);
      onWritten(one.operation, answer.entry);
    } else if (refused?.refusal.code === 'OLD_PROGRAM') return connection.outdated();
    else if (refused && !refused.gone && refused.refusal.code !== 'TOO_MUCH') {
      onHeld(null);
      onRefused(one.operation, refused.refusal);
    } else {
      onHeld(refused ? (refused.gone ? 'gone' : 'slower') : answer && 'retry' in answer ? heldBy(answer) : 'late');
      cancel = clock.after(pauseBefore(count, timing), () => void attempt(count + 1));
      return;
    }
    await attempt(0);
  };

  return {
    send() {
      if (!busy) void attempt(0);
    },
    cut() {
      round += 1;
      busy = false;
      cancel();
      trust();
      onHeld(null);
    },
  };
}
