import { createMemoryArchive } from './memoryArchive.ts';
import { createMemoryAttention } from './memoryAttention.ts';
import { createMemoryErrata } from './memoryErrata.ts';
import { createMemoryLibrary } from './memoryLibrary.ts';
import { createMemoryLog } from './memoryLog.ts';
import { createMemoryPeople } from './memoryPeople.ts';
import { createMemorySections } from './memorySections.ts';
import { emptyShelves } from './shelves.ts';
import type { Store } from './store.ts';

/** Everything in this process and gone with it: for tests, and to see what the contract asks without a database in the way. */
export function openMemory(): Store {
  const shelves = emptyShelves();
  return {
    people: createMemoryPeople(shelves),
    sections: createMemorySections(shelves),
    library: createMemoryLibrary(shelves),
    log: createMemoryLog(shelves),
    attention: createMemoryAttention(shelves),
    archive: createMemoryArchive(shelves),
    errata: createMemoryErrata(shelves),
    ping: async () => {},
    close: async () => {},
  };
}
