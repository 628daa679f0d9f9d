import type pg from 'pg';
import type { PlaceOfPart } from './ground.ts';
import type { Place } from './partLog.ts';

export interface PlaceRow extends Place, PlaceOfPart {}

const LOCK = `select p.head, p.revision, p.rewritten, p.section_id as section, w.programme_id as programme, g.ends::text as ends, over_everywhere(g.ends) as over
  from part p join work w on w.id = p.work_id join programme g on g.id = w.programme_id where p.id = $1 for update of p`;

/** Locks the part's row, which orders its log, and reads where the part is; undefined when there is no such part. */
export async function lockPlace(client: pg.PoolClient, part: string): Promise<PlaceRow | undefined> {
  const { rows } = await client.query<PlaceRow>({ name: 'lock', text: LOCK, values: [part] });
  return rows[0];
}

export const isElsewhere = (place: Place, expected: Place): boolean => place.head !== expected.head || place.revision !== expected.revision || (place.rewritten ?? 0) !== (expected.rewritten ?? 0);
