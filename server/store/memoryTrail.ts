import { randomUUID } from 'node:crypto';
import type { TrailRow } from '../../core/agreement/wire/trail.ts';
import type { Shelves } from './shelves.ts';
import type { By, News, Trail } from './trail.ts';

/** A row as it is told now. */
export const rowOf = ({ kind, about = null, section = null, part = null, facts = {} }: News, by: By): TrailRow => ({ id: randomUUID(), at: new Date().toISOString(), kind, by: by && { id: by.id, name: by.name }, about: about && { id: about.id, name: about.name }, section, part, facts });

export function createMemoryTrail({ trail }: Shelves): Trail {
  return {
    async tell(news, by) {
      trail.push(rowOf(news, by));
    },
    async rows({ person, kind, before, limit, within }) {
      const end = before === undefined ? trail.length : trail.findIndex(({ id }) => id === before);
      const asked = (row: TrailRow) => (person === undefined || row.by?.id === person || row.about?.id === person) && (kind === undefined || row.kind === kind);
      const seen = ({ section, about }: TrailRow) => within === null || (section !== null && within.sections.includes(section)) || (about !== null && within.people.includes(about.id));
      return trail.slice(0, end).reverse().filter((row) => asked(row) && seen(row)).slice(0, limit);
    },
  };
}
