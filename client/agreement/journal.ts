import type { Queued, QueueStorage } from './queue.ts';

/** A place that has what it is given before the call returns; small, for moments only. */
export interface Journal {
  read(key: string): readonly Queued[];
  write(key: string, queued: readonly Queued[]): void;
}

const withAll = (list: readonly Queued[], more: readonly Queued[]): readonly Queued[] => [...list, ...more.filter(({ operation }) => !list.some((one) => one.operation === operation))];

/** A storage that needs its time, with a journal beside it: a page that is left in the very moment something was written finds it there when it comes back. */
export function journalled(storage: QueueStorage, journal: Journal): QueueStorage {
  return {
    async load(key) {
      const owed = journal.read(key);
      if (owed.length > 0) {
        await storage.change(key, (list) => withAll(list, owed));
        journal.write(key, []);
      }
      return storage.load(key);
    },
    async change(key, edit) {
      journal.write(key, edit(journal.read(key)));
      const written = new Set<string>();
      await storage.change(key, (list) => {
        const after = edit(list);
        for (const { operation } of after) written.add(operation);
        return after;
      });
      journal.write(key, journal.read(key).filter(({ operation }) => !written.has(operation)));
    },
  };
}

/** The browser's small storage. Where it is full or shut, the large one must do alone. */
export function localJournal(): Journal {
  const at = (key: string) => `bowline/journal/${key}`;
  return {
    read(key) {
      try {
        return JSON.parse(localStorage.getItem(at(key)) ?? '[]') as Queued[];
      } catch {
        return [];
      }
    },
    write(key, queued) {
      try {
        if (queued.length > 0) localStorage.setItem(at(key), JSON.stringify(queued));
        else localStorage.removeItem(at(key));
      } catch {
        // Full or shut: nothing to do here.
      }
    },
  };
}
