import { createHash, randomUUID } from 'node:crypto';
import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import pg from 'pg';
import type { Connection } from './connection.ts';
import { Unstartable } from './unstartable.ts';

const FOLDER = join(import.meta.dirname, '../../prisma/migrations');
/** Any number will do, as long as every Bowline takes the same. */
const LOCK = 4_640_018;

/** The table as Prisma itself makes it, so that its own tools can read what was applied. */
const TABLE = `create table if not exists _prisma_migrations (
  id varchar(36) primary key, checksum varchar(64) not null, finished_at timestamptz, migration_name varchar(255) not null,
  logs text, rolled_back_at timestamptz, started_at timestamptz not null default now(), applied_steps_count integer not null default 0)`;

/** Applies what is missing, each file in one transaction; several processes may start at once. `only`: those that are wanted, where not all are. Returns the names applied. */
export async function migrate(connection: Connection, folder = FOLDER, only?: readonly string[]): Promise<string[]> {
  const client = new pg.Client(connection);
  client.on('error', () => {});
  await client.connect();
  try {
    await client.query('select pg_advisory_lock($1)', [LOCK]);
    await client.query(TABLE);
    return await applyMissing(client, folder, only);
  } finally {
    await client.end();
  }
}

/** Every change of the database this program knows, oldest first. */
export function migrationNames(folder = FOLDER): string[] {
  return readdirSync(folder, { withFileTypes: true }).filter((entry) => entry.isDirectory()).map((entry) => entry.name).sort();
}

async function applyMissing(client: pg.Client, folder: string, only: readonly string[] | undefined): Promise<string[]> {
  const { rows } = await client.query<{ migration_name: string; checksum: string }>('select migration_name, checksum from _prisma_migrations where finished_at is not null and rolled_back_at is null');
  const applied = new Map(rows.map((row) => [row.migration_name, row.checksum]));
  const files = migrationNames(folder);
  const unknown = [...applied.keys()].find((name) => !files.includes(name));
  if (unknown) throw new Unstartable(`The database has a change this Bowline does not know (${unknown}). Start the newer Bowline that made it.`);
  const done: string[] = [];
  for (const name of files) {
    if (only && !only.includes(name)) continue;
    const sql = readFileSync(join(folder, name, 'migration.sql'), 'utf8');
    const checksum = createHash('sha256').update(sql).digest('hex');
    const before = applied.get(name);
    if (before === checksum) continue;
    if (before) throw new Unstartable(`The migration ${name} was edited after it was applied. Put the file back and write a new migration.`);
    await apply(client, name, sql, checksum);
    done.push(name);
  }
  return done;
}

async function apply(client: pg.Client, name: string, sql: string, checksum: string): Promise<void> {
  await client.query('begin');
  try {
    // Row-level security holds for the owner of the tables too; a change of the database sees every row.
    await client.query("select set_config('bowline.whole', 'on', true)");
    await client.query(sql);
    await client.query('insert into _prisma_migrations (id, checksum, migration_name, finished_at, applied_steps_count) values ($1, $2, $3, now(), 1)', [randomUUID(), checksum, name]);
    await client.query('commit');
  } catch (reason) {
    await client.query('rollback');
    throw new Unstartable(`The migration ${name} does not apply: ${(reason as Error).message}. Nothing of it was kept.`);
  }
}
