import { createHash } from 'node:crypto';
import pg from 'pg';
import type { Connection } from '../connection.ts';
import { BackupRefused, type BackupTable, type Head } from './format.ts';
import { appliedIn, quoted, tablesOf } from './tables.ts';

/** Rows fetched at once; a document as it was uploaded may be 60 MB. Chosen, not measured. */
const AT_ONCE = 200;
const LARGE_AT_ONCE = 1;

/**
 * A whole database as lines of text, read in one transaction: everything in it is of one moment, however long reading takes and whatever is written
 * meanwhile. Nothing waits for it. `onRow` hears the count so far. Throws BackupRefused where no Bowline has been.
 */
export async function* backupLines(connection: Connection, takenAt: Date, onRow: (rows: number) => void = () => {}): AsyncGenerator<string> {
  const client = new pg.Client(connection);
  client.on('error', () => {});
  await client.connect();
  try {
    await client.query("set timezone = 'UTC'; set datestyle = 'ISO'; set extra_float_digits = 1");
    await client.query('begin transaction isolation level repeatable read read only');
    await client.query("set local bowline.whole = 'on'");
    const migrations = await appliedIn(client);
    if (migrations.length === 0) throw new BackupRefused('There is nothing to back up: no Bowline has used this database yet.');
    const tables = await tablesOf(client);
    const head: Head = { bowline: 'backup', version: 1, takenAt: takenAt.toISOString(), migrations, tables };
    const hash = createHash('sha256');
    const line = (value: unknown): string => {
      const text = `${JSON.stringify(value)}\n`;
      hash.update(text);
      return text;
    };
    yield line(head);
    const rows = tables.map(() => 0);
    for (const [index, table] of tables.entries()) {
      for await (const values of rowsOf(client, table)) {
        rows[index]! += 1;
        onRow(rows.reduce((sum, count) => sum + count, 0));
        yield line([index, ...values]);
      }
    }
    yield `${JSON.stringify({ rows, sha256: hash.digest('hex') })}\n`;
  } finally {
    await client.end();
  }
}

async function* rowsOf(client: pg.Client, { name, columns }: BackupTable): AsyncGenerator<(string | null)[]> {
  const texts = columns.map((column) => `${quoted(column.name)}::text`).join(', ');
  await client.query(`declare backup_rows no scroll cursor for select ${texts} from ${quoted(name)}`);
  const most = columns.some(({ type }) => type === 'bytea') ? LARGE_AT_ONCE : AT_ONCE;
  for (;;) {
    const { rows } = await client.query<(string | null)[]>({ text: `fetch ${most} from backup_rows`, rowMode: 'array' });
    yield* rows;
    if (rows.length < most) break;
  }
  await client.query('close backup_rows');
}
