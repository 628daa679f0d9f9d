import { createHash } from 'node:crypto';
import pg from 'pg';
import type { z } from 'zod';
import type { Connection } from '../connection.ts';
import { migrate, migrationNames } from '../migrate.ts';
import { BackupRefused, Head, Row, Tail, type BackupTable } from './format.ts';
import { appliedIn, quoted, tablesOf } from './tables.ts';

/** Rows and characters written at once. Chosen, not measured. */
const AT_ONCE = 500;
const LONGEST = 8_000_000;

const DAMAGED = 'The backup is damaged or cut off, so nothing was put back. Fetch it again from where it is kept, or take an older one.';

/** A line in the form it must have, or the backup is damaged. */
function read<S extends z.ZodType>(schema: S, line: string): z.infer<S> {
  try {
    return schema.parse(JSON.parse(line));
  } catch {
    throw new BackupRefused(DAMAGED);
  }
}

/**
 * Puts a backup into an empty database, all or nothing, and brings it up to this program. Returns the number of rows. Throws BackupRefused where
 * something is there already, where the backup is damaged, or where it was made by a newer program.
 */
export async function putBack(connection: Connection, lines: AsyncIterable<string>): Promise<number> {
  const iterator = lines[Symbol.asyncIterator]();
  const first = await iterator.next();
  const head = first.done ? undefined : asHead(first.value);
  if (!head) throw new BackupRefused('This file is no backup of Bowline. Choose the file that "bowline backup" wrote.');
  const unknown = head.migrations.find((name) => !migrationNames().includes(name));
  if (unknown !== undefined) throw new BackupRefused(`The backup was made by a newer Bowline (${unknown}). Put it back with that one.`);
  await prepare(connection, head);
  const client = new pg.Client(connection);
  client.on('error', () => {});
  await client.connect();
  try {
    await client.query("set timezone = 'UTC'; set datestyle = 'ISO'");
    await client.query('begin');
    await client.query("set local bowline.whole = 'on'");
    await onlyEmpty(client);
    await triggers(client, 'disable');
    const rows = await fill(client, head, first.value as string, iterator);
    await triggers(client, 'enable');
    await client.query('commit');
    await migrate(connection);
    return rows;
  } finally {
    await client.end();
  }
}

function asHead(line: string): Head | undefined {
  try {
    return Head.parse(JSON.parse(line));
  } catch {
    return undefined;
  }
}

/** The tables as they were when the backup was taken. */
async function prepare(connection: Connection, { migrations }: Head): Promise<void> {
  const client = new pg.Client(connection);
  await client.connect();
  const applied = await appliedIn(client).finally(() => client.end());
  if (applied.length === 0) await migrate(connection, undefined, migrations);
  else if (applied.join() !== migrations.join()) throw new BackupRefused('The database was made ready by another version of Bowline than the backup. Put the backup into a database that was never used, or choose a new folder with BOWLINE_DATA.');
}

async function onlyEmpty(client: pg.Client): Promise<void> {
  for (const { name } of await tablesOf(client)) {
    const { rowCount } = await client.query(`select 1 from ${quoted(name)} limit 1`);
    if (rowCount) throw new BackupRefused('There is something in this library already, and a backup is only put back into an empty one. Choose a new folder with BOWLINE_DATA, or an empty database with DATABASE_URL.');
  }
}

/** What the database writes by itself stands in the backup already. */
async function triggers(client: pg.Client, what: 'disable' | 'enable'): Promise<void> {
  for (const { name } of await tablesOf(client)) await client.query(`alter table ${quoted(name)} ${what} trigger user`);
}

async function fill(client: pg.Client, head: Head, first: string, lines: AsyncIterator<string>): Promise<number> {
  const hash = createHash('sha256').update(`${first}\n`);
  const counts = head.tables.map(() => 0);
  let waiting: { table: number; rows: (string | null)[][]; length: number } = { table: 0, rows: [], length: 0 };
  const write = async () => {
    if (waiting.rows.length) await insert(client, head.tables[waiting.table]!, waiting.rows);
  };
  for (let next = await lines.next(); !next.done; next = await lines.next()) {
    if (!next.value.startsWith('[')) {
      await write();
      const { rows, sha256 } = read(Tail, next.value);
      const whole = sha256 === hash.digest('hex') && rows.join() === counts.join() && (await lines.next()).done;
      if (!whole) throw new BackupRefused(DAMAGED);
      return rows.reduce((sum, count) => sum + count, 0);
    }
    hash.update(`${next.value}\n`);
    const [table, ...values] = read(Row, next.value);
    if (values.length !== head.tables[table]?.columns.length) throw new BackupRefused(DAMAGED);
    if (table !== waiting.table || waiting.rows.length >= AT_ONCE || waiting.length > LONGEST) {
      await write();
      waiting = { table, rows: [], length: 0 };
    }
    counts[table]! += 1;
    waiting.rows.push(values);
    waiting.length += next.value.length;
  }
  throw new BackupRefused(DAMAGED);
}

async function insert(client: pg.Client, { name, columns }: BackupTable, rows: (string | null)[][]): Promise<void> {
  const into = columns.map((column) => quoted(column.name)).join(', ');
  const values = columns.map(({ type }, index) => `(row ->> ${index})::${type}`).join(', ');
  try {
    await client.query(`insert into ${quoted(name)} (${into}) select ${values} from json_array_elements($1::json) row`, [JSON.stringify(rows)]);
  } catch (reason) {
    // Values that do not fit, rows that point nowhere: what was read is not what was written.
    if (/^2[23]/.test(String((reason as { code?: unknown }).code))) throw new BackupRefused(DAMAGED);
    throw reason;
  }
}
