import type pg from 'pg';
import type { Actor } from '../../core/agreement/people.ts';
import type { Refusal } from '../../core/agreement/refusal.ts';
import type { SeatId } from '../../core/music/seat.ts';
import { askerKey, type Asker, type Ground, type RefusedOperation } from './partLog.ts';
import { entryOf, type EntryRow } from './entryRow.ts';
import { rolesOf } from './rolesOf.ts';

/** Reads what the rules must know, after the part's row is locked. The section is held too: no seating changes between reading and commit. */
export async function readGround(client: pg.PoolClient, section: string | null, askers: Asker[], operations: string[]): Promise<Ground> {
  const { rows } = await client.query<{ seats: SeatId[] }>({ name: 'seats', text: 'select seats from section where id = $1 for share', values: [section] });
  return { seats: rows[0]?.seats ?? [], actors: await readActors(client, section, askers), known: await readKnown(client, operations) };
}

interface ActorRow {
  key: string;
  id: string;
  name: string;
  librarian: boolean;
  principal: boolean | null;
  seat: SeatId | null;
}

const ACTORS = `select a.key, p.id, p.name, p.librarian, m.principal, m.seat
  from unnest($1::text[], $2::text[], $3::text[]) as a(key, person, session)
  join person p on p.id = a.person
  left join membership m on m.person_id = p.id and m.section_id = $4
  where a.session is null or exists (select 1 from session s where s.id = a.session and s.person_id = a.person and s.revoked_at is null and s.expires_at > now())`;

async function readActors(client: pg.PoolClient, section: string | null, askers: Asker[]): Promise<Map<string, Actor>> {
  const values = [askers.map(askerKey), askers.map((asker) => asker.person), askers.map((asker) => asker.session), section];
  const { rows } = await client.query<ActorRow>({ name: 'actors', text: ACTORS, values });
  return new Map(rows.map((row) => [row.key, { id: row.id, name: row.name, roles: rolesOf(row.librarian, row.principal), seat: row.seat }]));
}

const KNOWN = `select part_id, seq, operation, name, input, events, person_id as by, by_name as "byName", at from operation where operation = any($1)`;
const KNOWN_REFUSED = `select operation, part_id as part, name, person_id as by, at, refusal from refused_operation where operation = any($1)`;

async function readKnown(client: pg.PoolClient, operations: string[]): Promise<Ground['known']> {
  const done = await client.query<EntryRow & { part_id: string }>({ name: 'known', text: KNOWN, values: [operations] });
  const refused = await client.query<Omit<RefusedOperation, 'at' | 'refusal'> & { at: Date; refusal: Refusal }>({ name: 'known-refused', text: KNOWN_REFUSED, values: [operations] });
  const known: Ground['known'] = new Map(refused.rows.map((row) => [row.operation, { ...row, at: row.at.toISOString() }]));
  for (const row of done.rows) known.set(row.operation, { part: row.part_id, entry: entryOf(row) });
  return known;
}
