import { leads } from '../../core/agreement/seating.ts';
import type { Hall } from '../halls.ts';
import { partNow, type PartNow } from '../operations/partNow.ts';
import type { Person } from '../store/people.ts';
import type { StoredPart } from '../store/library.ts';
import { notFound, trouble } from './trouble.ts';

export interface MarkedPart extends PartNow {
  part: StoredPart;
}

/** A part and what was agreed on it, for its principal or the librarian. */
export async function markedPart(hall: Hall, id: string, person: Person): Promise<MarkedPart> {
  const part = await hall.store.library.part(id);
  if (!part) throw notFound('part');
  const now = await partNow(hall, part);
  if (!person.librarian && !leads(now.section, person.id)) throw trouble(403, 'NOT_YOUR_EXPORT', 'Marked parts are given out by the librarian or the principal of the section. Ask one of them.');
  return { part, ...now };
}
