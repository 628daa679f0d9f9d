import type { Installation } from './installation.ts';
import { createMemoryArchive } from './memoryArchive.ts';
import { createMemoryAttempts } from './memoryAttempts.ts';
import { createMemoryAttention } from './memoryAttention.ts';
import { createMemoryDoor } from './memoryDoor.ts';
import { createMemoryErrata } from './memoryErrata.ts';
import { createMemoryJobs, type MemoryJobs } from './memoryJobs.ts';
import { createMemoryLibrary } from './memoryLibrary.ts';
import { createMemoryLog } from './memoryLog.ts';
import { createMemoryPeople } from './memoryPeople.ts';
import { openMemoryQueue } from './memoryQueue.ts';
import { createMemorySections } from './memorySections.ts';
import { createMemoryTrail } from './memoryTrail.ts';
import { findIn } from './memoryWhereabouts.ts';
import { emptyEntry } from './shelves.ts';

/** Everything in this process and gone with it: for tests, and to see what the contract asks without a database in the way. */
export function openMemory(): Installation {
  const entry = emptyEntry();
  const queue = openMemoryQueue();
  const jobsOf = new Map<string, MemoryJobs>();
  return {
    door: createMemoryDoor(entry),
    queue,
    attempts: createMemoryAttempts(),
    of(ensemble) {
      const { shelves } = entry.ensembles.get(ensemble) ?? entry.ensembles.none;
      const jobs = jobsOf.get(ensemble) ?? createMemoryJobs(queue, ensemble);
      jobsOf.set(ensemble, jobs);
      return {
        people: createMemoryPeople(shelves, entry),
        sections: createMemorySections(shelves),
        library: createMemoryLibrary(shelves, jobs),
        log: createMemoryLog(shelves, entry),
        attention: createMemoryAttention(shelves),
        archive: createMemoryArchive(shelves),
        errata: createMemoryErrata(shelves),
        trail: createMemoryTrail(shelves),
        jobs,
        find: findIn(shelves, jobs),
        close: async () => {},
      };
    },
    async alone(_what, work) {
      await work();
      return true;
    },
    connections: () => ({}),
    lacks: async () => [],
    ping: async () => {},
    close: () => queue.close(),
  };
}
