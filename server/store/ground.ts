import type pg from 'pg';
import type { Actor } from '../../core/agreement/people.ts';
import type { Refusal } from '../../core/agreement/refusal.ts';
import type { SeatId } from '../../core/music/seat.ts';
import { askerKey, type Asker, type Ground, type RefusedOperation } from './partLog.ts';
import { entryOf, type EntryRow } from './entryRow.ts';
import { rolesOf } from './rolesOf.ts';

export interface PlaceOfPart {
  section: string | null;
  programme: string;
  /** Its last day has gone by: whoever was there for it alone has no place any more. */
  over: boolean;
}

/** The ground with what its seats and askers were read from, to find out in one comparison whether they are still the same. */
export interface Read {
  ground: Ground;
  seats: SeatId[] | null;
  /** By `askerKey`. */
  told: Map<string, string>;
}

/** Reads what the rules must know, after the part's row is locked. The section and the sign-ins are held too: no seating changes and nobody is signed out between reading and commit. */
export async function readGround(client: pg.PoolClient, place: PlaceOfPart, askers: Asker[], operations: string[]): Promise<Read> {
  // Held first, read in the next statement: only that one sees what a seating that was waited for has written.
  const [, { ground, ...read }, known] = await Promise.all([client.query(hold(place, askers)), readSeated(client, place, askers), readKnown(client, operations)]);
  return { ...read, ground: { ...ground, known } };
}

const HOLD = `select (select count(pg_advisory_xact_lock_shared(session_key(one))::text) from unnest($2::text[]) as one),
  (select id from section where id = $1 for share)`;
const hold = ({ section }: PlaceOfPart, askers: readonly Asker[]): pg.QueryConfig => ({ name: 'hold', text: HOLD, values: [section, askers.flatMap(({ session }) => session ?? [])] });

interface ActorRow {
  seats: SeatId[] | null;
  /** null in the one row that comes when nobody asks. */
  key: string | null;
  id: string;
  name: string;
  librarian: boolean;
  principal: boolean | null;
  seat: SeatId | null;
  /** All of an actor in one text. */
  told: string;
}

/** $1 to $6 are what `seatedBy` gives. */
const SEATED = 'select * from seated_here($1::text[], $2::text[], $3::text[], $4, $5, $6)';
export const seatedBy = ({ section, programme, over }: PlaceOfPart, askers: Asker[]): unknown[] => [askers.map(askerKey), askers.map((asker) => asker.person), askers.map((asker) => asker.session), section, programme, over];

async function readSeated(client: pg.PoolClient, place: PlaceOfPart, askers: Asker[]): Promise<Omit<Read, 'ground'> & { ground: Omit<Ground, 'known'> }> {
  const { rows } = await client.query<ActorRow>({ name: 'seated', text: SEATED, values: seatedBy(place, askers) });
  const seats = rows[0]!.seats;
  const found = rows.flatMap((row): [string, ActorRow][] => (row.key === null ? [] : [[row.key, row]]));
  const actors = found.map(([key, row]): [string, Actor] => [key, { id: row.id, name: row.name, roles: rolesOf(row.librarian, row.principal), seat: row.seat }]);
  return { seats, told: new Map(found.map(([key, row]) => [key, row.told])), ground: { seats: seats ?? [], actors: new Map(actors) } };
}

const KNOWN = `select o.* from unnest($1::text[]) as asked(id) cross join lateral
  (select part_id, seq, operation, name, input, events, person_id as by, by_name as "byName", at from operation where operation = asked.id limit 1) o`;
const KNOWN_REFUSED = `select o.* from unnest($1::text[]) as asked(id) cross join lateral
  (select operation, part_id as part, name, person_id as by, at, refusal from refused_operation where operation = asked.id limit 1) o`;

async function readKnown(client: pg.PoolClient, operations: string[]): Promise<Ground['known']> {
  const [done, refused] = await Promise.all([
    client.query<EntryRow & { part_id: string }>({ name: 'known', text: KNOWN, values: [operations] }),
    client.query<Omit<RefusedOperation, 'at' | 'refusal'> & { at: Date; refusal: Refusal }>({ name: 'known-refused', text: KNOWN_REFUSED, values: [operations] }),
  ]);
  const known: Ground['known'] = new Map(refused.rows.map((row) => [row.operation, { ...row, at: row.at.toISOString() }]));
  for (const row of done.rows) known.set(row.operation, { part: row.part_id, entry: entryOf(row) });
  return known;
}
