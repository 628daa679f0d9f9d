import type { LogEntry } from '../../core/agreement/event.ts';
import { queued, queueKey, unqueued, type Queued, type QueueStorage } from './queue.ts';

export interface Waiting {
  /** Everything not yet in the confirmed state, in the order it was written. */
  list(): readonly Queued[];
  /** The first one the server has not answered. Nothing before the storage has been read: what it holds goes first. */
  next(): Queued | undefined;
  add(one: Queued): void;
  /** In the log at `entry.seq`: sent no more, and shown from here until that row is confirmed. */
  written(operation: string, entry: LogEntry): void;
  /** Forget it: its row is confirmed, or it was refused. */
  drop(operation: string): void;
  /** Every row up to `seq` is confirmed. */
  confirmedTo(seq: number): void;
  close(): void;
}

interface Options {
  person: string;
  part: string;
  storage: QueueStorage;
  onRead(): void;
  onCannotKeep(): void;
}

/** The operations of one person on one part on their way to the log, kept in `storage` under their ids until they are answered. */
export function waitingLine({ person, part, storage, onRead, onCannotKeep }: Options): Waiting {
  const key = queueKey(person, part);
  const answered = new Map<string, number>();
  let list: readonly Queued[] = [];
  let read = false;
  let closed = false;

  const keep = (edit: (kept: readonly Queued[]) => readonly Queued[]) => void storage.change(key, edit).catch(onCannotKeep);

  void storage
    .load(key)
    .then((kept) => {
      list = [...kept, ...list.filter((one) => !kept.some(({ operation }) => operation === one.operation))];
    }, onCannotKeep)
    .then(() => {
      read = true;
      if (!closed) onRead();
    });

  const drop = (operation: string) => {
    list = unqueued(list, operation);
    answered.delete(operation);
    keep((kept) => unqueued(kept, operation));
  };

  return {
    list: () => list,
    next: () => (read ? list.find(({ operation }) => !answered.has(operation)) : undefined),
    add(one) {
      list = [...list, one];
      keep((kept) => queued(kept, one));
    },
    written(operation, { seq }) {
      answered.set(operation, seq);
      keep((kept) => unqueued(kept, operation));
    },
    drop,
    confirmedTo(seq) {
      for (const [operation, at] of [...answered]) if (at <= seq) drop(operation);
    },
    close() {
      closed = true;
    },
  };
}
