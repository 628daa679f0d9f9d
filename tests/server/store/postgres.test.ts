import { setTimeout as wait } from 'node:timers/promises';
import { randomBytes, randomUUID } from 'node:crypto';
import pg from 'pg';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { askerKey } from '../../../server/store/partLog.ts';
import { isUnavailable } from '../../../server/store/unavailable.ts';
import { createTestDatabase, type TestDatabase } from '../../support/database.ts';
import { layOut } from '../../support/laidOut.ts';
import { inPostgres, type OneEnsemble } from '../../support/oneEnsemble.ts';

describe('what the server may do in the database', () => {
  let database: TestDatabase;
  let store: OneEnsemble;
  let client: pg.Client;
  beforeAll(async () => {
    database = await createTestDatabase();
    store = await inPostgres(database);
    client = new pg.Client(database.app);
    client.on('error', () => {});
    await client.connect();
    await client.query("select set_config('bowline.ensemble', $1, false)", [store.ensemble]);
  });
  afterAll(async () => {
    await client.end();
    await store.close();
    await database.drop();
  });

  it.each(['update operation set name = name', 'delete from operation', 'truncate operation', 'delete from refused_operation', 'update edition set file_name = file_name', 'drop table part', 'update _prisma_migrations set logs = null'])('is refused: %s', async (sql) => {
    await expect(client.query(sql)).rejects.toThrow(/permission denied|must be owner/);
  });

  it('it enters as neither a superuser nor one who passes row rules', async () => {
    const { rows } = await client.query('select rolsuper, rolbypassrls, rolcreatedb, rolcreaterole from pg_roles where rolname = current_user');
    expect(rows).toEqual([{ rolsuper: false, rolbypassrls: false, rolcreatedb: false, rolcreaterole: false }]);
  });

  it('a seating that changes waits for the batch under way, and the next batch sees it', async () => {
    const { part, section, player } = await layOut(store);
    await client.query('begin');
    await client.query('select head from part where id = $1 for update', [part]);
    await client.query('select seats from section where id = $1 for share', [section]);
    const order: string[] = [];
    const seating = store.sections.seat(section, { seats: [], principal: null }).then(() => order.push('seated'));
    await new Promise((resolve) => setTimeout(resolve, 150));
    order.push('batch ends');
    await client.query('commit');
    await seating;
    expect(order).toEqual(['batch ends', 'seated']);
    let roles: unknown;
    await store.log.commit(part, { head: 0, revision: 1 }, [{ person: player.id, session: null }], [], (ground) => {
      roles = [...ground.actors.values()].map((actor) => actor.roles);
      return { entries: [], refused: [], shelf: { stage: 'pulled', locked: false, open: 0 }, snapshot: null };
    });
    expect(roles).toEqual([[]]);
  });

  it('a batch that meets a programme’s seating being written waits for it, and goes by the new one', async () => {
    const { part, section, programme, player, guest } = await layOut(store);
    await client.query('begin');
    await client.query('select id from section where id = $1 for update', [section]);
    await client.query(`insert into programme_seating (programme_id, section_id, seats) values ($1, $2, '{1o}')`, [programme, section]);
    await client.query(`insert into programme_member (programme_id, section_id, person_id, seat) values ($1, $2, $3, '1o')`, [programme, section, guest.id]);
    const order: string[] = [];
    let seen: unknown;
    const askers = [player, guest].map((person) => ({ person: person.id, session: null }));
    const batch = store.log.commit(part, { head: 0, revision: 1 }, askers, [], (ground) => {
      order.push('batch reads');
      seen = [ground.seats, askers.map((asker) => ground.actors.get(askerKey(asker))?.roles)];
      return { entries: [], refused: [], shelf: { stage: 'pulled', locked: false, open: 0 }, snapshot: null };
    });
    await new Promise((resolve) => setTimeout(resolve, 150));
    order.push('seated');
    await client.query('commit');
    await batch;
    expect([order, seen]).toEqual([['seated', 'batch reads'], [['1o'], [[], ['player']]]]);
  });

  it('whoever is signed out while a batch goes by their sign-in is signed out after it has committed, and not before', async () => {
    const { part, section, player } = await layOut(store);
    const session = await store.door.openSession(player.id, randomBytes(32), new Date(Date.now() + 60_000), null);
    const asker = { person: player.id, session };
    const order: string[] = [];
    const commit = () =>
      store.log.commit(part, { head: 0, revision: 1 }, [asker], [], (ground) => {
        order.push(ground.actors.has(askerKey(asker)) ? 'ruled on' : 'not known any more');
        return { entries: [], refused: [], shelf: { stage: 'pulled', locked: false, open: 0 }, snapshot: null };
      });
    const waiting = async (many: number) => {
      const count = async () => (await client.query("select 1 from pg_locks where not granted")).rowCount;
      while ((await count())! < many) await wait(10);
    };
    // The seating is being written, so the batch waits, with the sign-in in its hands.
    await client.query('begin');
    await client.query('select pg_advisory_xact_lock(section_key($1))', [section]);
    const batch = commit();
    await waiting(1);
    const out = store.door.revoke(session, new Date()).then(() => order.push('signed out'));
    await Promise.race([out, waiting(2)]);
    await client.query('commit');
    await Promise.all([batch, out]);
    await commit();
    expect(order).toEqual(['ruled on', 'signed out', 'not known any more']);
  });

  it('a connection that is cut is told apart from a fault, and the store works again afterwards', async () => {
    const { part } = await layOut(store);
    await store.log.entries(part, 0, 1);
    const asking = store.log.commit(part, { head: 0, revision: 1 }, [{ person: 'nobody', session: null }], [], () => {
      throw new Error('is not reached');
    }).catch((reason: unknown) => reason);
    const { rowCount: cut } = await client.query('select pg_terminate_backend(pid) from pg_stat_activity where datname = current_database() and usename = current_user and pid <> pg_backend_pid()');
    const reason = await asking;
    expect(isUnavailable(reason) || (reason as Error).message === 'is not reached').toBe(true);
    // Each connection that lay idle may have been cut unnoticed, and is met once: asked again, the store opens another.
    let answer: Awaited<ReturnType<typeof store.log.entries>> | undefined;
    for (let met = 0; answer === undefined; met++) {
      answer = await store.log.entries(part, 0, 1).catch((one: unknown) => {
        expect(isUnavailable(one)).toBe(true);
        expect(met).toBeLessThan(cut!);
        return undefined;
      });
    }
    expect(answer?.head).toBe(0);
    expect(await store.people.byId(randomUUID())).toBeNull();
    await client.query("select set_config('bowline.ensemble', $1, false)", [store.ensemble]);
  });

  it('a statement that PostgreSQL breaks off counts as the database being away, a broken rule does not', async () => {
    const other = new pg.Client(database.app);
    other.on('error', () => {});
    await other.connect();
    const sleeping = other.query('select pg_sleep(20)').catch((reason: unknown) => reason);
    // Until it has begun there is nothing to break off.
    const breakOff = async () => (await client.query("select pg_terminate_backend(pid) from pg_stat_activity where query like 'select pg_sleep%' and state = 'active' and pid <> pg_backend_pid()")).rowCount;
    while (!(await breakOff())) await wait(20);
    expect(isUnavailable(await sleeping)).toBe(true);
    expect(isUnavailable(await client.query('insert into person (id) values (1)').catch((reason: unknown) => reason))).toBe(false);
    expect(isUnavailable(new pg.DatabaseError('null value in column', 1, 'error'))).toBe(false);
  });
});
