import type { LogEntry } from '../../core/agreement/event.ts';
import type { Store } from '../store/store.ts';
import type { LoadedPart } from './loadedPart.ts';
import { createPartQueue, type PartQueue } from './partQueue.ts';
import type { Answer, Asked } from './rule.ts';

/** Parts kept ready. Chosen, not measured. */
const KEPT = 200;

/** `ours`: written here just now; otherwise found in the store, written by another server. */
export type OnLogged = (part: string, entries: LogEntry[], ours: boolean) => unknown;

/** Decides and writes operations; both faces, HTTP and socket, ask here. */
export interface Authority {
  submit(part: string, asked: Asked): Promise<Answer | null>;
  current(part: string): Promise<LoadedPart | null>;
  /** Nothing is under way. */
  idle(): boolean;
}

/** `logged` hears of every batch of new rows, in order within a part. */
export function createAuthority(store: Store, logged: OnLogged = () => {}, now: () => Date = () => new Date()): Authority {
  const queues = new Map<string, PartQueue>();

  function queueOf(part: string): PartQueue {
    const queue = queues.get(part) ?? createPartQueue(store, part, now, (entries, ours) => logged(part, entries, ours));
    // Set again, so that the map runs from the longest unused to the latest.
    queues.delete(part);
    queues.set(part, queue);
    for (const [id, old] of queues) {
      if (queues.size <= KEPT) break;
      if (old.idle && old !== queue) queues.delete(id);
    }
    return queue;
  }

  return {
    submit: (part, asked) => queueOf(part).submit(asked),
    current: (part) => queueOf(part).current(),
    idle: () => [...queues.values()].every((queue) => queue.idle),
  };
}
