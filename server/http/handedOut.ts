import type { StoredPart } from '../store/library.ts';
import type { By, Trail } from '../store/trail.ts';

/**
 * Tells that music was handed out, before it goes: where telling fails, nothing is handed out. `what`: the form, as its file ends; `reader`: the section, a desk or
 * a seat.
 */
export const tellsHandedOut =
  (trail: Trail, by: By) =>
  ({ id, section, work, content }: StoredPart, what: string, reader: string): Promise<void> =>
    trail.tell({ kind: 'handedOut', part: id, section, facts: { work: work.title, part: content.name, what, reader } }, by);
