import { randomUUID } from 'node:crypto';
import { cpSync, mkdirSync, mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { MIGRATIONS } from '../../../prisma/difference.ts';
import { migrate } from '../../../server/database/migrate.ts';
import { createAuthority, type Authority } from '../../../server/operations/authority.ts';
import { isUnavailable } from '../../../server/store/unavailable.ts';
import { createTestDatabase, type TestDatabase } from '../../support/database.ts';
import { layOut, type LaidOut } from '../../support/laidOut.ts';
import { inPostgres, type OneEnsemble } from '../../support/oneEnsemble.ts';

/** What a newer program may bring while older ones run: columns that may stay empty or fill themselves, tables, indexes. */
const EXPANDS = `alter table operation add column device text;
alter table part add column colour text not null default 'black';
alter table session add column made_up text;
create table device (id text primary key, ensemble_id text not null default current_setting('bowline.ensemble'));
create index operation_at_idx on operation (at);`;
/** What it may not: the older program still writes this column. */
const CONTRACTS = 'alter table operation drop column by_name;';

describe('a newer program changes the database while this one runs on it', () => {
  const folder = mkdtempSync(join(tmpdir(), 'bowline-newer-'));
  let database: TestDatabase;
  let store: OneEnsemble;
  let laid: LaidOut;
  let authority: Authority;
  beforeAll(async () => {
    cpSync(MIGRATIONS, folder, { recursive: true });
    database = await createTestDatabase();
    store = await inPostgres(database);
    laid = await layOut(store);
    authority = createAuthority(store);
  });
  afterAll(async () => {
    await store.close();
    await database.drop();
    rmSync(folder, { recursive: true, force: true });
  });

  const newer = async (name: string, sql: string) => {
    mkdirSync(join(folder, name));
    writeFileSync(join(folder, name, 'migration.sql'), sql);
    expect(await migrate(database.owner, folder)).toEqual([name]);
  };
  const say = () => authority.submit(laid.part, { request: { operation: randomUUID(), name: 'comment', input: { id: randomUUID(), measure: 1, proposal: null, answers: null, text: 'On we go.' } }, asker: { person: laid.player.id, session: null } });

  it('one that only adds stops nobody: every operation is written and acknowledged, before, during and after', async () => {
    let going = true;
    let written = 0;
    const writers = Array.from({ length: 4 }, async () => {
      while (going) {
        // Where a batch and the change wait for each other PostgreSQL ends one of them: the page is told to send again.
        const answer = await say().catch((reason: unknown) => (isUnavailable(reason) ? null : Promise.reject(reason as Error)));
        if (answer === null) continue;
        expect(answer).toMatchObject({ ok: true });
        written += 1;
      }
    });
    try {
      await until(() => written > 20);
      await newer('29990101000000_device', EXPANDS);
      const after = written;
      await until(() => written > after + 20);
    } finally {
      // Whatever broke: writers that go on for ever keep the run from saying so.
      going = false;
      await Promise.all(writers);
    }
    const { head, entries } = (await store.log.entries(laid.part, 0, 100_000))!;
    expect([head, entries.length]).toEqual([written, written]);
    expect((await store.library.part(laid.part))!.content.measures.length).toBeGreaterThan(0);
    expect(await store.door.ensembles()).toHaveLength(1);
  });

  it('a program of before that is started again meanwhile says that it is too old, and changes nothing', async () => {
    await expect(migrate(database.owner)).rejects.toThrow('The database has a change this Bowline does not know (29990101000000_device). Start the newer Bowline that made it.');
    expect(await say()).toMatchObject({ ok: true });
  });

  it('one that takes away what this one writes stops it: nothing is acknowledged any more', async () => {
    const { head } = (await store.log.entries(laid.part, 0, 1))!;
    await newer('29990102000000_by_name', CONTRACTS);
    await expect(say()).rejects.toMatchObject({ code: '42703' });
    expect((await store.log.heads([laid.part])).get(laid.part)).toBe(head);
  });
});

async function until(holds: () => boolean): Promise<void> {
  while (!holds()) await new Promise((resolve) => setTimeout(resolve, 5));
}
