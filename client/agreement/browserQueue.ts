import { createStore, get, update } from 'idb-keyval';
import { journalled, localJournal } from './journal.ts';
import type { Queued, QueueStorage } from './queue.ts';

/** Unanswered operations in the browser's own database, shared by its windows. */
export function browserQueue(): QueueStorage {
  const store = createStore('bowline', 'unsent');
  const kept: QueueStorage = {
    load: async (key) => (await get<readonly Queued[]>(key, store)) ?? [],
    change: (key, edit) => update<readonly Queued[]>(key, (before) => edit(before ?? []), store),
  };
  return journalled(kept, localJournal());
}
