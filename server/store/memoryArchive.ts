import { musicPrints } from '../../core/archive/alike.ts';
import { keptMarks, type KeptSet, type KeptSetView } from '../../core/archive/keptSet.ts';
import type { Archive } from './archive.ts';
import { rowOf } from './memoryTrail.ts';
import type { Shelves } from './shelves.ts';

const viewOf = ({ parts, bytes: _, ...set }: KeptSet): KeptSetView => ({ ...set, parts: parts.map((part) => ({ name: part.content.name, section: part.section, marks: keptMarks(part).length })) });

export function createMemoryArchive({ kept, trail }: Shelves): Archive {
  return {
    async keep(sets, by = null, how = 'setKept') {
      const added = sets.filter(({ id }) => !kept.has(id));
      for (const set of added) {
        kept.set(set.id, set);
        trail.push(rowOf({ kind: how, facts: { work: set.title, season: set.season } }, by));
      }
      return added.map(({ id }) => id);
    },
    sets: async () => [...kept.values()].sort((a, b) => (a.keptAt < b.keptAt ? 1 : a.keptAt > b.keptAt ? -1 : a.id < b.id ? -1 : 1)).map(viewOf),
    set: async (id) => kept.get(id) ?? null,
    prints: async () => new Map([...kept].map(([id, { parts }]) => [id, parts.map(({ content }) => musicPrints(content))])),
  };
}
