import type pg from 'pg';
import type { AgreementState } from '../../core/agreement/state.ts';
import { PROTOCOL } from '../../core/agreement/wire/socket.ts';
import { entryOf, type EntryRow } from './entryRow.ts';
import { readGround } from './ground.ts';
import { MOVED, type PartLog, type Ruling } from './partLog.ts';
import { transaction } from './transaction.ts';

/** The hot path: raw statements, one transaction a batch, ordered by the lock on the part's row. */
export function createPostgresLog(pool: pg.Pool): PartLog {
  return {
    commit: (part, expected, askers, operations, decide) =>
      transaction(pool, async (client) => {
        const { rows } = await client.query<{ head: number; revision: number; section: string | null; programme: string; over: boolean }>({ name: 'lock', text: LOCK, values: [part] });
        const place = rows[0];
        if (!place) return null;
        if (place.head !== expected.head || place.revision !== expected.revision) return MOVED;
        const ruling = decide(await readGround(client, place, askers, operations));
        await write(client, part, ruling);
        return ruling;
      }),

    async entries(part, after, limit) {
      const { rows } = await pool.query<EntryRow & { head: number }>({ name: 'entries', text: ENTRIES, values: [part, after, limit] });
      if (!rows[0]) return null;
      return { head: rows[0].head, entries: rows.filter((row) => row.seq !== null).map(entryOf) };
    },

    async heads(parts) {
      const { rows } = await pool.query<{ id: string; head: number }>({ name: 'heads', text: 'select id, head from part where id = any($1)', values: [parts] });
      return new Map(rows.map((row) => [row.id, row.head]));
    },

    async snapshot(part, protocol) {
      const { rows } = await pool.query<{ state: AgreementState }>('select state from snapshot where part_id = $1 and protocol = $2 order by seq desc limit 1', [part, protocol]);
      return rows[0]?.state ?? null;
    },
  };
}

const LOCK = `select p.head, p.revision, p.section_id as section, w.programme_id as programme, coalesce(g.ends < (now() at time zone 'UTC')::date, false) as over
  from part p join work w on w.id = p.work_id join programme g on g.id = w.programme_id where p.id = $1 for update of p`;

/** One statement, so that head and rows cannot be of two moments. */
const ENTRIES = `select p.head, o.seq, o.operation, o.name, o.input, o.events, o.person_id as by, o.by_name as "byName", o.at
  from part p left join lateral (select * from operation where part_id = p.id and seq > $2 and seq <= p.head order by seq limit $3) o on true
  where p.id = $1 order by o.seq`;

const INSERT = `insert into operation (part_id, seq, operation, name, input, events, person_id, by_name, at)
  select $1, * from unnest($2::int[], $3::text[], $4::text[], $5::json[], $6::json[], $7::text[], $8::text[], $9::timestamptz[])`;
const REFUSE = `insert into refused_operation (operation, part_id, name, person_id, refusal, at)
  select * from unnest($1::text[], $2::text[], $3::text[], $4::text[], $5::json[], $6::timestamptz[])`;

async function write(client: pg.PoolClient, part: string, { entries, refused, shelf, snapshot }: Ruling): Promise<void> {
  const each = <T, V>(rows: T[], value: (row: T) => V): V[] => rows.map(value);
  if (refused.length) {
    await client.query({ name: 'refuse', text: REFUSE, values: [each(refused, (row) => row.operation), each(refused, () => part), each(refused, (row) => row.name), each(refused, (row) => row.by), each(refused, (row) => JSON.stringify(row.refusal)), each(refused, (row) => row.at)] });
  }
  const last = entries.at(-1);
  if (!last) return;
  const values = [part, each(entries, (row) => row.seq), each(entries, (row) => row.operation), each(entries, (row) => row.name), each(entries, (row) => JSON.stringify(row.input ?? null)), each(entries, (row) => JSON.stringify(row.events)), each(entries, (row) => row.by), each(entries, (row) => row.byName), each(entries, (row) => row.at)];
  await client.query({ name: 'append', text: INSERT, values });
  await client.query({ name: 'head', text: 'update part set head = $2, stage = $3, locked = $4, open = $5 where id = $1', values: [part, last.seq, shelf.stage, shelf.locked, shelf.open] });
  if (snapshot) {
    await client.query('insert into snapshot (part_id, seq, state, protocol) values ($1, $2, $3, $4) on conflict (part_id, seq) do update set state = excluded.state, protocol = excluded.protocol', [part, snapshot.seq, JSON.stringify(snapshot), PROTOCOL]);
  }
}
