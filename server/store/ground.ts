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
  /** Its last day, ISO date. */
  ends: string | null;
  /** That day has gone by: whoever was there for it alone has no place any more. */
  over: boolean;
}

/** The ground, and which telling of its section it is: it holds while that number does. Null for a part that lies before no section. */
export interface Read {
  ground: Ground;
  told: number | null;
}

/** Reads what the rules must know, after the part's row is locked. The section and the sign-ins are held too: no seating changes and nobody is signed out between reading and commit. */
export async function readGround(client: pg.PoolClient, place: PlaceOfPart, askers: Asker[], operations: string[]): Promise<Read> {
  // Held first, read in the next statement: only that one sees what a seating that was waited for has written.
  const [, { ground, ...read }, known] = await Promise.all([client.query(hold(place, askers)), readSeated(client, place, askers), readKnown(client, operations)]);
  return { ...read, ground: { ...ground, known } };
}

const HOLD = `select (select count(pg_advisory_xact_lock_shared(session_key(one))::text) from unnest($2::text[]) as one), pg_advisory_xact_lock_shared(section_key($1))`;
const hold = ({ section }: PlaceOfPart, askers: readonly Asker[]): pg.QueryConfig => ({ name: 'hold', text: HOLD, values: [section, sessionsOf(askers)] });
export const sessionsOf = (askers: readonly Asker[]): string[] => askers.flatMap(({ session }) => session ?? []);

interface ActorRow {
  seats: SeatId[] | null;
  told: number | null;
  /** null in the one row that comes when nobody asks. */
  key: string | null;
  id: string;
  name: string;
  librarian: boolean;
  principal: boolean | null;
  seat: SeatId | null;
}

/**
 * Seats and members of the programme's own seating where it has one, else the section's. The plan is made once a connection, perhaps when
 * the tables were empty: each row is looked up by itself, so that it goes by the keys even then.
 */
const SEATED = `select g.seats, g.told, a.key, a.id, a.name, a.librarian, coalesce(o.principal, m.principal) as principal, coalesce(o.seat, m.seat) as seat
  from (select ps.section_id is not null as own, coalesce(ps.seats, s.seats) as seats, s.told from (select $4::text as section) part
    left join section s on s.id = part.section
    left join programme_seating ps on ps.section_id = part.section and ps.programme_id = $5) g
  left join (select a.key, p.*, b.* from unnest($1::text[], $2::text[], $3::text[]) as a(key, person, session)
    cross join lateral (select id, name from person where id = a.person limit 1) p
    cross join lateral (select librarian, deputy from belonging where person_id = a.person limit 1) b
    where a.session is null or (select true from session s where s.id = a.session and s.person_id = a.person and s.revoked_at is null and s.expires_at > now())) a on true
  left join lateral (select principal, seat from membership where not g.own and not a.deputy and person_id = a.id and section_id = $4 limit 1) m on true
  left join lateral (select principal, seat from programme_member where g.own and person_id = a.id and section_id = $4 and programme_id = $5 and not (a.deputy and $6) limit 1) o on true`;

async function readSeated(client: pg.PoolClient, { section, programme, over }: PlaceOfPart, askers: Asker[]): Promise<Omit<Read, 'ground'> & { ground: Omit<Ground, 'known'> }> {
  const values = [askers.map(askerKey), askers.map((asker) => asker.person), askers.map((asker) => asker.session), section, programme, over];
  const { rows } = await client.query<ActorRow>({ name: 'seated', text: SEATED, values });
  const [{ seats, told }] = rows as [ActorRow];
  const actors = rows.flatMap((row): [string, Actor][] => (row.key === null ? [] : [[row.key, { id: row.id, name: row.name, roles: rolesOf(row.librarian, row.principal), seat: row.seat }]]));
  return { told, ground: { seats: seats ?? [], actors: new Map(actors) } };
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
