import type pg from 'pg';
import type { BackupTable } from './format.ts';

const COLUMNS = `select c.relname as table, a.attname as name, format_type(a.atttypid, a.atttypmod) as type
  from pg_class c join pg_namespace n on n.oid = c.relnamespace join pg_attribute a on a.attrelid = c.oid
  where n.nspname = 'public' and c.relkind = 'r' and c.relname not in ('_prisma_migrations', 'job', 'job_file', 'job_piece') and a.attnum > 0 and not a.attisdropped
  order by c.relname, a.attnum`;
const POINTERS = `select s.relname as from, t.relname as to from pg_constraint k join pg_class s on s.oid = k.conrelid join pg_class t on t.oid = k.confrelid
  where k.contype = 'f' and s.oid <> t.oid order by 1, 2`;

/** Every table of ours with its columns, each after the tables it points to. Long work under way is no part of it: it is asked for again. */
export async function tablesOf(client: pg.ClientBase): Promise<BackupTable[]> {
  const tables = new Map<string, BackupTable>();
  for (const { table, name, type } of (await client.query<{ table: string; name: string; type: string }>(COLUMNS)).rows) {
    const known = tables.get(table) ?? { name: table, columns: [] };
    known.columns.push({ name, type });
    tables.set(table, known);
  }
  const { rows: pointers } = await client.query<{ from: string; to: string }>(POINTERS);
  const ordered: BackupTable[] = [];
  while (tables.size) {
    const free = [...tables.keys()].filter((name) => !pointers.some(({ from, to }) => from === name && tables.has(to)));
    if (free.length === 0) throw new Error(`These tables point to each other: ${[...tables.keys()].join(', ')}.`);
    for (const name of free) {
      ordered.push(tables.get(name)!);
      tables.delete(name);
    }
  }
  return ordered;
}

/** Changes of the database that were applied, oldest first; none where it was never used. */
export async function appliedIn(client: pg.ClientBase): Promise<string[]> {
  const { rows: there } = await client.query<{ there: boolean }>("select to_regclass('public._prisma_migrations') is not null as there");
  if (!there[0]!.there) return [];
  const { rows } = await client.query<{ name: string }>('select migration_name as name from _prisma_migrations where finished_at is not null and rolled_back_at is null order by 1');
  return rows.map(({ name }) => name);
}

export const quoted = (name: string): string => `"${name.replaceAll('"', '""')}"`;
