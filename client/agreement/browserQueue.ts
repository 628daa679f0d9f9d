import { createStore, get, update } from 'idb-keyval';
import type { Queued, QueueStorage } from './queue.ts';

/** Unanswered operations in the browser's own database, shared by its windows. */
export function browserQueue(): QueueStorage {
  const store = createStore('bowline', 'unsent');
  return {
    load: async (key) => (await get<readonly Queued[]>(key, store)) ?? [],
    change: (key, edit) => update<readonly Queued[]>(key, (before) => edit(before ?? []), store),
  };
}
