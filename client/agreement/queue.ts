/** An operation that has been written here and not yet answered. Plain JSON. */
export interface Queued {
  operation: string;
  name: string;
  input: unknown;
  /** When it was written, ISO 8601. */
  at: string;
}

/**
 * Where unanswered operations outlive the page. `key` names a person and a part: what one person has written must never be sent as another.
 * `change` must be one step: two windows of one browser may write at once.
 */
export interface QueueStorage {
  load(key: string): Promise<readonly Queued[]>;
  change(key: string, edit: (queued: readonly Queued[]) => readonly Queued[]): Promise<void>;
}

/** For tests and for clients without a disk; keeps what it is given as JSON, as a real storage would. */
export function memoryQueue(): QueueStorage {
  const kept = new Map<string, string>();
  const read = (key: string) => JSON.parse(kept.get(key) ?? '[]') as Queued[];
  return {
    load: async (key) => read(key),
    change: async (key, edit) => void kept.set(key, JSON.stringify(edit(read(key)))),
  };
}

export const queueKey = (person: string, part: string): string => `unsent/${person}/${part}`;

/** Adds one, once. */
export function queued(list: readonly Queued[], one: Queued): readonly Queued[] {
  return list.some(({ operation }) => operation === one.operation) ? list : [...list, one];
}

export function unqueued(list: readonly Queued[], operation: string): readonly Queued[] {
  return list.filter((one) => one.operation !== operation);
}
