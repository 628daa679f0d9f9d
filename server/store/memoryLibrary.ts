import { randomUUID } from 'node:crypto';
import type { ProgrammeView, WorkView } from '../../core/agreement/wire/http.ts';
import type { InstrumentName } from '../../core/music/part.ts';
import { laidOverRow } from './laidOver.ts';
import type { Library, NewEdition, NewPart, StoredPart } from './library.ts';
import type { MemoryJobs } from './memoryJobs.ts';
import { seatingsOf } from './memorySections.ts';
import { rowOf } from './memoryTrail.ts';
import type { MemoryPart, Shelves } from './shelves.ts';

export function createMemoryLibrary({ programmes, works, editions, parts, sections, seatings, people, trail }: Shelves, jobs: MemoryJobs): Library {
  const of = (work: string) => [...parts.values()].filter((part) => part.work === work);

  function stored(part: MemoryPart): StoredPart {
    const { id, title, composer } = works.get(part.work)!;
    return { id: part.id, work: { id, title, composer }, edition: part.edition, section: part.section, content: part.content, revision: part.revision, rewritten: part.rewritten, head: part.log.length };
  }

  function view(id: string): WorkView | null {
    const work = works.get(id);
    if (!work) return null;
    const edition = editions.get(work.editions.at(-1)!)!;
    const listed = of(id).map(({ section, content, shelf, log, ...part }) => ({
      id: part.id,
      name: content.name,
      instrument: content.instrument,
      section: section === null ? null : { id: section, name: sections.get(section)!.name },
      measures: content.measures.length,
      ...shelf,
      head: log.length,
      revision: part.revision,
    }));
    return { id, title: work.title, composer: work.composer, fileName: edition.fileName, importedAt: edition.at.toISOString(), parts: listed };
  }

  function shown(id: string): ProgrammeView | null {
    const programme = programmes.get(id);
    if (!programme) return null;
    return { id, ...programme, works: [...works.values()].filter((work) => work.programme === id).map((work) => view(work.id)!), seatings: seatingsOf({ people, seatings }, id) };
  }

  function keep(work: string, edition: NewEdition): string {
    const id = randomUUID();
    editions.set(id, { ...edition, bytes: edition.bytes.slice() });
    works.get(work)!.editions.push(id);
    return id;
  }

  function addParts(work: string, edition: string, added: NewPart[]): void {
    for (const { content, section } of added) {
      const id = randomUUID();
      parts.set(id, { id, work, edition, section, content, revision: 1, rewritten: 0, log: [], earlier: [], shelf: { stage: 'pulled', locked: false, open: 0 }, snapshots: [] });
    }
  }

  const tellOf = (kind: 'workLaid' | 'filesLaid' | 'editionLaid', work: string, { by, fileName }: NewEdition) => trail.push(rowOf({ kind, facts: { work, file: fileName } }, people.get(by) ?? null));

  return {
    async addProgramme(programme, by = null) {
      const id = randomUUID();
      programmes.set(id, programme);
      trail.push(rowOf({ kind: 'programmeAdded', facts: { programme: programme.title } }, by));
      return shown(id)!;
    },
    async setProgramme(id, programme, by = null) {
      if (!programmes.has(id)) return false;
      programmes.set(id, programme);
      trail.push(rowOf({ kind: 'programmeChanged', facts: { programme: programme.title } }, by));
      return true;
    },
    programme: async (id) => shown(id),
    programmes: async () => [...programmes.keys()].map((id) => shown(id)!),

    async addWork(programme, { title, composer }, edition, added, further = [], ending) {
      if (!programmes.has(programme)) return null;
      if (ending) jobs.mayEnd(ending);
      const id = randomUUID();
      works.set(id, { id, programme, title, composer, editions: [] });
      addParts(id, keep(id, edition), added);
      for (const file of further) addParts(id, keep(id, file.edition), file.parts);
      tellOf('workLaid', title, edition);
      if (ending) jobs.endWith(ending, id);
      return view(id);
    },

    async addFiles(work, files, ending) {
      if (!works.has(work)) return null;
      if (ending) jobs.mayEnd(ending);
      for (const { edition, parts: added } of files) {
        addParts(work, keep(work, edition), added);
        tellOf('filesLaid', works.get(work)!.title, edition);
      }
      if (ending) jobs.endWith(ending, work);
      return view(work);
    },

    async addEdition(work, edition, changed, added, ending) {
      if (ending) jobs.mayEnd(ending);
      const source = keep(work, edition);
      for (const { id, content, measures } of changed) {
        const part = parts.get(id)!;
        part.earlier.push({ revision: part.revision, edition: part.edition, content: part.content, settled: {} });
        if (measures) part.log.push(laidOverRow(part.log.length + 1, source, measures, edition, people.get(edition.by)!.name));
        Object.assign(part, { content, edition: source, revision: part.revision + 1 });
      }
      addParts(work, source, added);
      tellOf('editionLaid', works.get(work)!.title, edition);
      if (ending) jobs.endWith(ending, work);
      return view(work)!;
    },

    work: async (id) => view(id),
    part: async (id) => (parts.has(id) ? stored(parts.get(id)!) : null),
    partsOf: async (work) => of(work).map(stored),
    source: async (id) => editions.get(id) ?? null,

    earlier: async (id) => (parts.get(id)?.earlier ?? []).map(({ content: _, ...earlier }) => ({ ...earlier, fileName: editions.get(earlier.edition)!.fileName })).toReversed(),
    earlierMusic: async (id, revision) => parts.get(id)?.earlier.find((one) => one.revision === revision)?.content ?? null,
    async settle(id, revision, key, settled) {
      const earlier = parts.get(id)?.earlier.find((one) => one.revision === revision);
      if (!earlier) return false;
      const { [key]: _, ...others } = earlier.settled;
      earlier.settled = settled ? { ...others, [key]: settled } : others;
      return true;
    },

    async assign(id, section, by = null) {
      const part = parts.get(id);
      const to = section === null ? null : sections.get(section);
      if (!part || to === undefined) return false;
      part.section = section;
      if (to) part.content = { ...part.content, instrument: to.instrument as InstrumentName };
      trail.push(rowOf({ kind: 'partAssigned', part: id, section, facts: { part: part.content.name, work: works.get(part.work)!.title, ...(to ? { section: to.name } : {}) } }, by));
      return true;
    },
  };
}
