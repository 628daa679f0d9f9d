import { Readable } from 'node:stream';
import pg from 'pg';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { putBack } from '../../../../server/database/backup/putBack.ts';
import { backupLines } from '../../../../server/database/backup/take.ts';
import { grantToServer } from '../../../../server/database/roles.ts';
import { createAuthority } from '../../../../server/operations/authority.ts';
import type { Installation } from '../../../../server/store/installation.ts';
import { openPostgres } from '../../../../server/store/postgres.ts';
import { createEmptyDatabase, createTestDatabase, type TestDatabase } from '../../../support/database.ts';
import { layOut, oneMark } from '../../../support/laidOut.ts';

async function linesOf({ owner }: TestDatabase): Promise<string[]> {
  const lines: string[] = [];
  for await (const line of backupLines(owner, new Date(0))) lines.push(line.trimEnd());
  return lines;
}

async function ownersView({ owner }: TestDatabase): Promise<unknown[]> {
  const client = new pg.Client(owner);
  await client.connect();
  return (await client.query('select id from person').finally(() => client.end())).rows;
}

/** Everything but when it was taken and the sum over it. */
const rowsOf = (lines: string[]): string[] => lines.slice(1, -1).sort();

describe('a backup of two ensembles', () => {
  let source: TestDatabase;
  let target: TestDatabase;
  let [live, restored]: Installation[] = [];
  let lines: string[];
  const ensembles: string[] = [];
  beforeAll(async () => {
    source = await createTestDatabase();
    target = await createEmptyDatabase();
    live = openPostgres(source);
    for (const name of ['Varnholm Strings', 'Harbour Players']) {
      const { id } = (await live.door.addEnsemble(name))!;
      ensembles.push(id);
      const store = live.of(id);
      const laid = await layOut(store);
      const request = { operation: crypto.randomUUID(), name: 'propose', input: oneMark() };
      await createAuthority(store).submit(laid.part, { request, asker: { person: laid.principal.id, session: null } });
      await live.door.setHand(laid.player.id, { factor: 0.9, shortFourth: true });
      await store.attention.setLetters(laid.player.id, { address: 'mona@harbour.example', language: 'fr' });
    }
    lines = await linesOf(source);
    await putBack(target.owner, Readable.from(lines));
    await grantToServer(target.owner);
    restored = openPostgres(target);
  });
  afterAll(async () => {
    await live?.close();
    await restored?.close();
    await source.drop();
    await target.drop();
  });

  it('holds the rows of both, hands and letters too, though the owner of the tables sees none of them by itself', async () => {
    const tables = (JSON.parse(lines[0]!) as { tables: { name: string }[] }).tables.map(({ name }) => name);
    const counts = (JSON.parse(lines.at(-1)!) as { rows: number[] }).rows;
    const of = (table: string) => counts[tables.indexOf(table)];
    expect(['ensemble', 'part', 'operation', 'hand', 'letters'].map(of)).toEqual([2, 2, 2, 2, 2]);
    expect(await ownersView(source)).toEqual([]);
  });

  it('put back is the same, row by row', async () => {
    expect(rowsOf(await linesOf(target))).toEqual(rowsOf(lines));
  });

  it('put back, each ensemble still sees itself alone', async () => {
    for (const id of ensembles) {
      const [before, after] = await Promise.all([live!, restored!].map((one) => one.of(id).library.programmes()));
      expect(after).toEqual(before);
      expect(after).toHaveLength(1);
    }
  });
});
