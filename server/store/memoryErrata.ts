import { randomUUID } from 'node:crypto';
import { inOrder, type Errata } from './errata.ts';
import type { Shelves } from './shelves.ts';

export function createMemoryErrata({ errata, works }: Shelves): Errata {
  return {
    async add(work, erratum) {
      if (!works.has(work)) return null;
      const added = { ...erratum, id: randomUUID(), settled: null };
      errata.set(added.id, { ...added, work });
      return added;
    },
    of: async (work) => [...errata.values()].filter((one) => one.work === work).map(({ work: _, ...one }) => one).sort(inOrder),
    async settle(id, at) {
      const found = errata.get(id);
      if (found) errata.set(id, { ...found, settled: at?.toISOString() ?? null });
      return found !== undefined;
    },
  };
}
