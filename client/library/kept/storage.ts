/** Where answers of the library outlive the page. Values are plain JSON or text. */
export interface KeptStorage {
  read(key: string): Promise<unknown>;
  /** One step, so that two windows of one browser may write at once. */
  change(key: string, edit: (before: unknown) => unknown): Promise<void>;
  keys(): Promise<readonly string[]>;
  remove(keys: readonly string[]): Promise<void>;
}

/** For tests and for browsers that keep nothing. */
export function memoryKept(): KeptStorage {
  const kept = new Map<string, string>();
  const read = (key: string): unknown => (kept.has(key) ? (JSON.parse(kept.get(key)!) as unknown) : undefined);
  return {
    read: async (key) => read(key),
    change: async (key, edit) => void kept.set(key, JSON.stringify(edit(read(key)))),
    keys: async () => [...kept.keys()],
    remove: async (keys) => keys.forEach((key) => kept.delete(key)),
  };
}
