import type pg from 'pg';
import type { PlaceOfPart } from './ground.ts';
import type { Place } from './partLog.ts';

export interface PlaceRow extends Place, PlaceOfPart {}

/** Locks the part's row, which orders its log, and reads where the part is; undefined when there is no such part. */
export async function lockPlace(client: pg.PoolClient, part: string): Promise<PlaceRow | undefined> {
  // Locked first, read in the next statement: only that one sees what was waited for.
  const [, { rows }] = await Promise.all([client.query({ name: 'lock', text: 'select from part where id = $1 for update', values: [part] }), client.query<PlaceRow>({ name: 'place-of', text: 'select * from place_of_part($1)', values: [part] })]);
  return rows[0];
}

export const isElsewhere = (place: Place, expected: Place): boolean => place.head !== expected.head || place.revision !== expected.revision || (place.rewritten ?? 0) !== (expected.rewritten ?? 0);
