import type pg from 'pg';
import type { PlaceOfPart } from './ground.ts';
import type { Place } from './partLog.ts';

export interface PlaceRow extends Place, PlaceOfPart {}

/** Where a part is: what stands in a row of it. */
export const PLACE = `select p.id, p.head, p.revision, p.rewritten, p.section_id as section, w.programme_id as programme, coalesce(g.ends < ((now() - interval '12 hours') at time zone 'UTC')::date, false) as over
  from part p join work w on w.id = p.work_id join programme g on g.id = w.programme_id`;
const LOCK = `${PLACE} where p.id = $1 for update of p`;

/** Locks the part's row, which orders its log, and reads where the part is. */
export const lock = (part: string): pg.QueryConfig => ({ name: 'lock', text: LOCK, values: [part] });

export const isElsewhere = (place: Place, expected: Place): boolean => place.head !== expected.head || place.revision !== expected.revision || (place.rewritten ?? 0) !== (expected.rewritten ?? 0);
