import { randomUUID } from 'node:crypto';
import { Readable } from 'node:stream';
import pg from 'pg';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { APP, DOOR } from '../../../server/database/connection.ts';
import { GRANTS } from '../../../server/database/grants.ts';
import type { Connection } from '../../../server/database/connection.ts';
import { createTestDatabase, type TestDatabase } from '../../support/database.ts';
import { layOut, oneMark, type LaidOut } from '../../support/laidOut.ts';
import { createAuthority } from '../../../server/operations/authority.ts';
import { inPostgres, type OneEnsemble } from '../../support/oneEnsemble.ts';

async function enter(connection: Connection): Promise<pg.Client> {
  const client = new pg.Client(connection);
  client.on('error', () => {});
  await client.connect();
  return client;
}

describe('what PostgreSQL itself shows of another ensemble', () => {
  let database: TestDatabase, store: OneEnsemble, app: pg.Client, door: pg.Client, owner: pg.Client;
  let ours: LaidOut, theirs: LaidOut;
  let other: string;
  let tables: string[];
  let ofEnsemble: string[];
  const lookAs = (ensemble: string) => app.query("select set_config('bowline.ensemble', $1, false)", [ensemble]);
  const count = async (client: pg.Client, table: string, where = 'true') => Number((await client.query<{ n: string }>(`select count(*) as n from "${table}" where ${where}`)).rows[0]!.n);

  async function fill(at: LaidOut, into: OneEnsemble): Promise<void> {
    const authority = createAuthority(into);
    const ask = (name: string, input: unknown) => authority.submit(at.part, { request: { operation: randomUUID(), name, input }, asker: { person: at.principal.id, session: null } });
    await ask('propose', oneMark());
    await ask('lock', {});
    await into.sections.seatFor(at.programme, at.section, { seats: [{ seat: '1o', person: at.principal.id }], principal: at.principal.id });
    await into.attention.see(at.player.id, at.part, 1);
    await into.attention.setLetters(at.player.id, { address: `${at.player.id}@orchestra.example`, language: 'en' });
    await into.errata.add(at.work, { part: 'Violin I', edition: 'spring.musicxml', measure: 1, number: '1', says: 'a', should: 'b', by: 'Ilya Brandt', at: new Date().toISOString() });
    const { content } = (await into.library.part(at.part))!;
    await into.library.addEdition(at.work, { bytes: new Uint8Array([1]), fileName: 'spring-2.musicxml', by: at.librarian.id, at: new Date() }, [{ id: at.part, content, measures: null }], []);
    await into.archive.keep([{ id: randomUUID(), title: 'Spring', composer: '', ensemble: '', conductor: '', season: '', bytes: new Uint8Array([1]), fileName: 'a.musicxml', keptBy: 'Ilya Brandt', keptAt: new Date().toISOString(), parts: [{ content, section: null, seats: [], log: [] }] }]);
    const upload = await into.jobs.keepUpload('spring.musicxml', Readable.from([Buffer.from('<score/>')]));
    await into.jobs.add({ kind: 'import', target: at.programme, order: {}, progress: {}, by: at.librarian.id, alone: null, uploads: [upload], at: new Date() });
    await into.people.leave((await into.people.add('Ulf Varga', false)).id, at.librarian);
    await into.door.openSession(at.player.id, crypto.getRandomValues(new Uint8Array(32)), new Date(Date.now() + 60_000), null);
    const part = await into.log.commit(at.part, { head: (await into.log.heads([at.part])).get(at.part)!, revision: 2 }, [], [], () => ({ entries: [], refused: [], shelf: { stage: 'pulled', locked: false, open: 0 }, snapshot: null }));
    expect(part).not.toBe('moved');
  }

  beforeAll(async () => {
    database = await createTestDatabase();
    store = await inPostgres(database);
    other = (await store.door.addEnsemble('Haldane Players'))!.id;
    const otherStore: OneEnsemble = { ...store.installation.of(other), installation: store.installation, door: store.door, ensemble: other };
    [ours, theirs] = [await layOut(store), await layOut(otherStore)];
    await fill(ours, store);
    await fill(theirs, otherStore);
    await store.door.setHand(ours.player.id, { factor: 0.9, shortFourth: true });
    [app, door, owner] = [await enter(database.app), await enter(database.door), await enter(database.owner)];
    await owner.query("set bowline.whole = 'on'");
    const known = await owner.query<{ name: string; own: boolean }>(
      `select c.relname as name, exists (select 1 from pg_attribute a where a.attrelid = c.oid and a.attname = 'ensemble_id') as own
       from pg_class c join pg_namespace n on n.oid = c.relnamespace where n.nspname = 'public' and c.relkind = 'r' and c.relname <> '_prisma_migrations' order by 1`,
    );
    tables = known.rows.map(({ name }) => name);
    ofEnsemble = known.rows.filter(({ own }) => own).map(({ name }) => name).filter((name) => GRANTS.some(({ table, role }) => table === name && role === APP) && name !== 'session');
    // Snapshots are written every two hundred rows; here one each will do.
    for (const [ensemble, part] of [[store.ensemble, ours.part], [other, theirs.part]]) await owner.query(`insert into snapshot (ensemble_id, part_id, seq, state, protocol) values ($1, $2, 1, '{}', 0)`, [ensemble, part]);
  });
  afterAll(async () => {
    await Promise.all([app.end(), door.end(), owner.end()]);
    await store.close();
    await database.drop();
  });

  it('row-level security holds every table, for its owner too, and every table has a policy', async () => {
    const { rows } = await owner.query<{ name: string }>(
      `select c.relname as name from pg_class c join pg_namespace n on n.oid = c.relnamespace
       where n.nspname = 'public' and c.relkind = 'r' and c.relname <> '_prisma_migrations'
       and not (c.relrowsecurity and c.relforcerowsecurity and (select count(*) from pg_policy p where p.polrelid = c.oid) >= 2)`,
    );
    expect(rows).toEqual([]);
  });

  it('every table is in the list of grants', () => {
    expect(tables.filter((name) => !GRANTS.some(({ table }) => table === name))).toEqual([]);
    expect(ofEnsemble.length).toBeGreaterThanOrEqual(17);
  });

  it('a connection told one ensemble sees its rows and none of another, in every table', async () => {
    await lookAs(store.ensemble);
    for (const table of ofEnsemble) {
      expect({ table, rows: await count(owner, table, `ensemble_id = '${other}'`) > 0 }).toEqual({ table, rows: true });
      expect({ table, foreign: await count(app, table, `ensemble_id = '${other}'`) }).toEqual({ table, foreign: 0 });
      expect({ table, own: await count(app, table) }).toEqual({ table, own: await count(owner, table, `ensemble_id = '${store.ensemble}'`) });
    }
    expect(await count(app, 'person', `id = '${theirs.player.id}'`)).toBe(0);
    expect((await app.query('select id from session where person_id = $1', [theirs.player.id])).rowCount).toBe(0);
    expect(await count(app, 'letters', `person_id = '${theirs.player.id}'`)).toBe(0);
    expect(await count(app, 'ensemble')).toBe(1);
  });

  it('a connection told nothing sees nothing', async () => {
    const fresh = await enter(database.app);
    for (const table of [...ofEnsemble, 'person', 'letters', 'ensemble']) expect({ table, rows: await count(fresh, table) }).toEqual({ table, rows: 0 });
    await expect(fresh.query("insert into programme (id, title) values ('p', 'Nobody’s')")).rejects.toThrow('bowline.ensemble');
    await fresh.end();
  });

  it('rows of another ensemble can be neither changed nor removed, and none can be laid there', async () => {
    await lookAs(store.ensemble);
    for (const table of ofEnsemble) {
      const may = GRANTS.find((grant) => grant.table === table && grant.role === APP)!.may;
      if (may.includes('update')) expect({ table, changed: (await app.query(`update "${table}" set ensemble_id = ensemble_id where ensemble_id = $1`, [other])).rowCount }).toEqual({ table, changed: 0 });
      if (may.includes('delete')) expect({ table, removed: (await app.query(`delete from "${table}" where ensemble_id = $1`, [other])).rowCount }).toEqual({ table, removed: 0 });
    }
    await expect(app.query("insert into programme (id, ensemble_id, title) values ('p', $1, 'Theirs')", [other])).rejects.toThrow('row-level security');
    await expect(app.query('update programme set ensemble_id = $1', [other])).rejects.toThrow('row-level security');
  });

  it('a row of one ensemble cannot point at a thing of another', async () => {
    await lookAs(store.ensemble);
    await expect(app.query("insert into work (id, programme_id, title, composer) values ('w', $1, '', '')", [theirs.programme])).rejects.toThrow('foreign key');
    await expect(app.query("insert into refused_operation (operation, part_id, name, person_id, refusal, at) values ('o', $1, 'adopt', $2, '{}', now())", [theirs.part, ours.player.id])).rejects.toThrow('foreign key');
    await expect(app.query('update part set section_id = $1 where id = $2', [theirs.section, ours.part])).rejects.toThrow('foreign key');
    await expect(app.query('insert into membership (person_id, section_id) values ($1, $2)', [theirs.guest.id, ours.section])).rejects.toThrow('foreign key');
  });

  it('at the door no music is reached, and from the music no proof of who somebody is', async () => {
    const doors = new Set(GRANTS.filter(({ role }) => role === DOOR).map(({ table }) => table));
    for (const table of tables.filter((name) => !doors.has(name))) await expect(door.query(`select 1 from "${table}"`)).rejects.toThrow('permission denied');
    for (const table of ['hand', 'sign_in_link']) await expect(app.query(`select 1 from "${table}"`)).rejects.toThrow('permission denied');
    await expect(app.query('select token_hash from session')).rejects.toThrow('permission denied');
  });

  it('a hand is shown to whoever it belongs to, and to nobody else', async () => {
    expect(await count(door, 'hand')).toBe(0);
    await door.query("select set_config('bowline.person', $1, false)", [ours.principal.id]);
    expect(await count(door, 'hand')).toBe(0);
    await door.query("select set_config('bowline.person', $1, false)", [ours.player.id]);
    expect(await count(door, 'hand')).toBe(1);
  });

  it('whoever owns the tables sees rows only where it is said that all are meant', async () => {
    await owner.query("set bowline.whole = 'off'");
    expect(await count(owner, 'part')).toBe(0);
    await owner.query("set bowline.whole = 'on'");
    expect(await count(owner, 'part')).toBe(2);
  });
});
