import type pg from 'pg';
import type { LogEntry } from '../../core/agreement/event.ts';
import { PROTOCOL } from '../../core/agreement/wire/socket.ts';
import type { RefusedOperation, Ruling } from './partLog.ts';

/** In the order of `entryColumns`. */
const ENTRY_COLUMNS = 'seq, operation, name, input, events, person_id, by_name, at';

const INSERT = `insert into operation (part_id, ${ENTRY_COLUMNS})
  select $1, * from unnest($2::int[], $3::text[], $4::text[], $5::json[], $6::json[], $7::text[], $8::text[], $9::timestamptz[])`;
const REFUSE = `insert into refused_operation (operation, part_id, name, person_id, refusal, at)
  select * from unnest($1::text[], $2::text[], $3::text[], $4::text[], $5::json[], $6::timestamptz[])`;
const SNAPSHOT = `insert into snapshot (part_id, seq, state, protocol) values ($1, $2, $3, $4)
  on conflict (part_id, seq) do update set state = excluded.state, protocol = excluded.protocol`;

const each = <T, V>(rows: readonly T[], value: (row: T) => V): V[] => rows.map(value);

export const entryColumns = (entries: readonly LogEntry[]): unknown[] => [each(entries, (row) => row.seq), each(entries, (row) => row.operation), each(entries, (row) => row.name), each(entries, (row) => JSON.stringify(row.input ?? null)), each(entries, (row) => JSON.stringify(row.events)), each(entries, (row) => row.by), each(entries, (row) => row.byName), each(entries, (row) => row.at)];

/** Statements of one ruling, sent together. */
export function write(client: pg.PoolClient, part: string, { entries, refused, shelf, snapshot }: Ruling): Promise<unknown>[] {
  const sent = refused.length ? [client.query({ name: 'refuse', text: REFUSE, values: refusedColumns(part, refused) })] : [];
  const last = entries.at(-1);
  if (!last) return sent;
  sent.push(client.query({ name: 'append', text: INSERT, values: [part, ...entryColumns(entries)] }));
  sent.push(client.query({ name: 'head', text: 'update part set head = $2, stage = $3, locked = $4, open = $5 where id = $1', values: [part, last.seq, shelf.stage, shelf.locked, shelf.open] }));
  if (snapshot) sent.push(client.query({ name: 'snapshot', text: SNAPSHOT, values: [part, snapshot.seq, JSON.stringify(snapshot), PROTOCOL] }));
  return sent;
}

const refusedColumns = (part: string, refused: readonly RefusedOperation[]): unknown[] => [each(refused, (row) => row.operation), each(refused, () => part), each(refused, (row) => row.name), each(refused, (row) => row.by), each(refused, (row) => JSON.stringify(row.refusal)), each(refused, (row) => row.at)];
