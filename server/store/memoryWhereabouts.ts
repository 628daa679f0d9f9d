import type { MemoryJobs } from './memoryJobs.ts';
import type { Shelves } from './shelves.ts';
import type { Kind, Thing, Whereabouts } from './whereabouts.ts';

export function findIn({ parts, works, programmes, sections, kept, errata }: Shelves, jobs: Pick<MemoryJobs, 'isImport'>): (thing: Thing) => Promise<Whereabouts | null> {
  const ofWork = (id: string | undefined): Whereabouts | null => (id !== undefined && works.has(id) ? { programme: works.get(id)!.programme } : null);
  const there = (has: boolean, programme: string | null): Whereabouts | null => (has ? { programme } : null);
  const find: Record<Kind, (id: string) => Whereabouts | null> = {
    part: (id) => ofWork(parts.get(id)?.work),
    work: ofWork,
    programme: (id) => there(programmes.has(id), id),
    section: (id) => there(sections.has(id), null),
    set: (id) => there(kept.has(id), null),
    erratum: (id) => ofWork(errata.get(id)?.work),
    import: (id) => there(jobs.isImport(id), null),
  };
  return async ({ kind, id }) => find[kind](id);
}
