import { createStore, delMany, get, keys, update } from 'idb-keyval';
import type { KeptStorage } from './storage.ts';

/** Answers in the browser's own database, shared by its windows. */
export function browserKept(): KeptStorage {
  const store = createStore('bowline-kept', 'answers');
  return {
    read: (key) => get(key, store),
    change: (key, edit) => update(key, edit, store),
    keys: () => keys<string>(store),
    remove: (all) => delMany([...all], store),
  };
}
