import { cpSync, mkdtempSync, readdirSync, appendFileSync, mkdirSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import pg from 'pg';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { difference, MIGRATIONS } from '../../../prisma/difference.ts';
import { migrate } from '../../../server/database/migrate.ts';
import { createTestDatabase, type TestDatabase } from '../../support/database.ts';

describe('migrations', () => {
  let database: TestDatabase;
  const copy = () => {
    const folder = mkdtempSync(join(tmpdir(), 'bowline-migrations-'));
    cpSync(MIGRATIONS, folder, { recursive: true });
    return folder;
  };
  const tables = async () => {
    const client = new pg.Client(database.owner);
    await client.connect();
    const { rows } = await client.query<{ name: string }>("select table_name as name from information_schema.tables where table_schema = 'public'");
    await client.end();
    return rows.map((row) => row.name);
  };
  beforeAll(async () => (database = await createTestDatabase()));
  afterAll(() => database.drop());

  it('lead to schema.prisma without a difference', async () => {
    expect(await difference()).toBe('');
  });

  it('are applied once, whoever asks at the same time', async () => {
    expect(await Promise.all([migrate(database.owner), migrate(database.owner)])).toEqual([[], []]);
  });

  it('a file edited after it was applied is refused by name', async () => {
    const folder = copy();
    const first = readdirSync(folder).find((name) => name.endsWith('_first'))!;
    appendFileSync(join(folder, first, 'migration.sql'), '\n-- edited');
    await expect(migrate(database.owner, folder)).rejects.toThrow(`The migration ${first} was edited after it was applied.`);
  });

  it('a file that fails half way leaves nothing behind', async () => {
    const folder = copy();
    mkdirSync(join(folder, '29990101000000_broken'));
    writeFileSync(join(folder, '29990101000000_broken/migration.sql'), 'create table half (a int); create table half (a int);');
    await expect(migrate(database.owner, folder)).rejects.toThrow('29990101000000_broken does not apply');
    expect(await tables()).not.toContain('half');
  });

  it('two processes that start on a new migration apply it once between them', async () => {
    const folder = copy();
    mkdirSync(join(folder, '29990101000000_desk'));
    writeFileSync(join(folder, '29990101000000_desk/migration.sql'), 'create table desk (a int);');
    const applied = await Promise.all([migrate(database.owner, folder), migrate(database.owner, folder)]);
    expect(applied.flat()).toEqual(['29990101000000_desk']);
  });

  it('a database changed by a newer program is refused', async () => {
    await expect(migrate(database.owner)).rejects.toThrow('29990101000000_desk');
  });
});
