import { randomUUID } from 'node:crypto';
import pg from 'pg';
import { afterAll, beforeAll, beforeEach, describe, expect, it } from 'vitest';
import { emptyState } from '../../../core/agreement/state.ts';
import { PROTOCOL } from '../../../core/agreement/wire/socket.ts';
import { askerKey, MOVED, type Asker, type Ground, type Ruling } from '../../../server/store/partLog.ts';
import { createTestDatabase, type TestDatabase } from '../../support/database.ts';
import { layOut, type LaidOut } from '../../support/laidOut.ts';
import { inPostgres, type OneEnsemble } from '../../support/oneEnsemble.ts';

describe('a batch ruled on what was last read is written only while that holds', () => {
  let database: TestDatabase;
  let store: OneEnsemble;
  let other: pg.Client;
  let laid: LaidOut;
  let asker: Asker;
  let seen: { roles: readonly string[] | null; known: boolean }[];

  beforeAll(async () => {
    database = await createTestDatabase();
    store = await inPostgres(database);
    other = new pg.Client(database.app);
    other.on('error', () => {});
    await other.connect();
    await other.query("select set_config('bowline.ensemble', $1, false)", [store.ensemble]);
  });
  afterAll(async () => {
    await other.end();
    await store.close();
    await database.drop();
  });
  beforeEach(async () => {
    laid = await layOut(store);
    asker = { person: laid.player.id, session: await store.door.openSession(laid.player.id, new TextEncoder().encode(randomUUID()), new Date(Date.now() + 3_600_000), null) };
    seen = [];
    await write(0);
    seen = [];
  });

  /** One row by the player if they play here and the id is new; nothing otherwise. */
  const decide = (head: number, operation: string, snapshot = false) => (ground: Ground): Ruling => {
    const actor = ground.actors.get(askerKey(asker));
    seen.push({ roles: actor ? actor.roles : null, known: ground.known.has(operation) });
    const may = actor?.roles.includes('player') && !ground.known.has(operation);
    const entry = { seq: head + 1, operation, name: 'comment', input: {}, events: [], by: asker.person, byName: 'Mona Castell', at: new Date().toISOString() };
    return { entries: may ? [entry] : [], refused: [], shelf: { stage: 'roundSection', locked: false, open: 7 }, snapshot: snapshot ? { ...emptyState(), seq: head + 1 } : null };
  };
  const write = (head: number, operation: string = randomUUID(), snapshot = false) => store.log.commit(laid.part, { head, revision: 1 }, [asker], [operation], decide(head, operation, snapshot));
  const rows = async () => (await store.log.entries(laid.part, 0, 100))!.entries.map(({ seq }) => seq);

  it('it is ruled on once, and its row, its shelf and its snapshot are there', async () => {
    await write(1, randomUUID(), true);
    expect(seen).toEqual([{ roles: ['player'], known: false }]);
    expect(await rows()).toEqual([1, 2]);
    expect((await other.query('select head, stage, open from part where id = $1', [laid.part])).rows).toEqual([{ head: 2, stage: 'roundSection', open: 7 }]);
    expect((await store.log.snapshot(laid.part, PROTOCOL))?.seq).toBe(2);
  });

  it('who has lost their seat since is read anew, and nothing was written', async () => {
    await store.sections.seat(laid.section, { seats: [], principal: null });
    await write(1, randomUUID(), true);
    expect(seen.map(({ roles }) => roles)).toEqual([['player'], []]);
    expect(await rows()).toEqual([1]);
    expect(await store.log.snapshot(laid.part, PROTOCOL)).toBeNull();
  });

  it('who has signed out since has no say any more', async () => {
    await store.door.revoke(asker.session!, new Date());
    await write(1);
    expect(seen.map(({ roles }) => roles)).toEqual([['player'], null]);
    expect(await rows()).toEqual([1]);
  });

  it('a seat of the section that has gone is noticed, though the asker keeps theirs', async () => {
    await store.sections.seat(laid.section, { seats: [{ seat: '1i', person: laid.player.id }], principal: null });
    await write(1);
    expect(seen).toHaveLength(2);
    expect(await rows()).toEqual([1, 2]);
  });

  it.each<[string, (at: LaidOut) => Promise<unknown>, readonly string[] | null, number[]]>([
    ['what somebody is in the ensemble', ({ player }) => store.people.stand(player.id, { librarian: true, deputy: false }), ['player', 'librarian'], [1, 2]],
    ['that they have left', ({ player }) => store.people.leave(player.id), null, [1]],
    ['another seating for this programme', ({ programme, section }) => store.sections.seatFor(programme, section, { seats: [], principal: null }), [], [1]],
    ['who leads', ({ section, player }) => store.sections.seat(section, { seats: [{ seat: '1o', person: player.id }], principal: player.id }), ['principal'], [1]],
    ['that the programme ends on another day', ({ programme }) => other.query("update programme set ends = '2999-01-01' where id = $1", [programme]), ['player'], [1, 2]],
    ['somebody else who came, which is told to every section', () => store.people.add('Tora Uhl', false), ['player'], [1, 2]],
  ])('%s is noticed, and ruled on anew', async (_what, change, roles, left) => {
    await change(laid);
    await write(1);
    expect(seen.map((one) => one.roles)).toEqual([['player'], roles && expect.arrayContaining([...roles])]);
    expect(await rows()).toEqual(left);
  });

  it('what another section, or nobody, has to do with leaves it as it is', async () => {
    const elsewhere = (await store.sections.add(`Second violins ${randomUUID()}`, 'violin'))!;
    await store.sections.seat(elsewhere.id, { seats: [{ seat: '1o', person: laid.guest.id }], principal: null });
    await write(1);
    expect(seen).toHaveLength(1);
    expect(await rows()).toEqual([1, 2]);
  });

  it('an id that was answered before, here or for another part, is ruled on as known', async () => {
    const { entries } = (await store.log.entries(laid.part, 0, 1))!;
    await write(1, entries[0]!.operation);
    expect(seen.map(({ known }) => known)).toEqual([false, true]);
    expect(await rows()).toEqual([1]);
  });

  it('a seating that is being written is waited for, and counts', async () => {
    await other.query('begin');
    await other.query('select id from section where id = $1 for update', [laid.section]);
    await other.query('delete from membership where section_id = $1', [laid.section]);
    const batch = write(1);
    // Until the batch waits for the section there is nothing to be seen.
    const waits = async () => (await other.query("select 1 from pg_stat_activity where wait_event_type = 'Lock' and datname = current_database()")).rowCount;
    while (!(await waits())) await new Promise((resolve) => setTimeout(resolve, 10));
    await other.query('commit');
    await batch;
    expect(seen.map(({ roles }) => roles)).toEqual([['player'], []]);
    expect(await rows()).toEqual([1]);
  });

  it('a part that has gone on, or is not there, is told as such', async () => {
    await other.query('update part set head = 5 where id = $1', [laid.part]);
    expect(await write(1)).toBe(MOVED);
    expect(await store.log.commit(randomUUID(), { head: 0, revision: 1 }, [asker], [randomUUID()], decide(0, randomUUID()))).toBeNull();
  });

  it('what the database refuses to take leaves nothing behind, and the connection works on', async () => {
    await other.query('insert into operation (part_id, seq, operation, name, input, events, person_id, by_name, at) values ($1, 2, $2, $3, $4, $4, $5, $3, now())', [laid.part, randomUUID(), 'comment', '{}', asker.person]);
    await expect(write(1)).rejects.toMatchObject({ code: '23505' });
    expect((await store.log.heads([laid.part])).get(laid.part)).toBe(1);
    expect(await store.people.byId(laid.player.id)).not.toBeNull();
  });
});
