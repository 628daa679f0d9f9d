import type pg from 'pg';
import type { Actor } from '../../core/agreement/people.ts';
import type { Refusal } from '../../core/agreement/refusal.ts';
import type { SeatId } from '../../core/music/seat.ts';
import { askerKey, type Asker, type Ground, type RefusedOperation } from './partLog.ts';
import { entryOf, type EntryRow } from './entryRow.ts';
import { rolesOf } from './rolesOf.ts';

interface PlaceOfPart {
  section: string | null;
  programme: string;
  /** Its last day has gone by: whoever was there for it alone has no place any more. */
  over: boolean;
}

/** Reads what the rules must know, after the part's row is locked. The section is held too: no seating changes between reading and commit. */
export async function readGround(client: pg.PoolClient, place: PlaceOfPart, askers: Asker[], operations: string[]): Promise<Ground> {
  // Held first, read in the next statement: only that one sees what a seating that was waited for has written.
  await client.query({ name: 'hold', text: 'select id from section where id = $1 for share', values: [place.section] });
  return { ...(await readSeated(client, place, askers)), known: await readKnown(client, operations) };
}

interface ActorRow {
  seats: SeatId[] | null;
  /** null in the one row that comes when nobody asks. */
  key: string | null;
  id: string;
  name: string;
  librarian: boolean;
  principal: boolean | null;
  seat: SeatId | null;
}

/** Seats and members of the programme's own seating where it has one, else the section's. */
const SEATED = `select g.seats, a.key, p.id, p.name, b.librarian, coalesce(o.principal, m.principal) as principal, coalesce(o.seat, m.seat) as seat
  from (select ps.section_id is not null as own, coalesce(ps.seats, s.seats) as seats from (select $4::text as section) part
    left join section s on s.id = part.section
    left join programme_seating ps on ps.section_id = part.section and ps.programme_id = $5) g
  left join (unnest($1::text[], $2::text[], $3::text[]) as a(key, person, session) join person p on p.id = a.person
    join belonging b on b.person_id = p.id
    and (a.session is null or exists (select 1 from session s where s.id = a.session and s.person_id = a.person and s.revoked_at is null and s.expires_at > now()))) on true
  left join membership m on not g.own and m.person_id = p.id and m.section_id = $4
  left join programme_member o on g.own and o.person_id = p.id and o.section_id = $4 and o.programme_id = $5 and not (b.deputy and $6)`;

async function readSeated(client: pg.PoolClient, { section, programme, over }: PlaceOfPart, askers: Asker[]): Promise<Pick<Ground, 'seats' | 'actors'>> {
  const values = [askers.map(askerKey), askers.map((asker) => asker.person), askers.map((asker) => asker.session), section, programme, over];
  const { rows } = await client.query<ActorRow>({ name: 'seated', text: SEATED, values });
  const actors = rows.flatMap((row): [string, Actor][] => (row.key === null ? [] : [[row.key, { id: row.id, name: row.name, roles: rolesOf(row.librarian, row.principal), seat: row.seat }]]));
  return { seats: rows[0]!.seats ?? [], actors: new Map(actors) };
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
