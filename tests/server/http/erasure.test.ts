import { randomUUID } from 'node:crypto';
import pg from 'pg';
import yauzl from 'yauzl';
import { text } from 'node:stream/consumers';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { replay } from '../../../core/agreement/replay.ts';
import { PROTOCOL } from '../../../core/agreement/wire/socket.ts';
import { backupLines } from '../../../server/database/backup/take.ts';
import { createTestDatabase, type TestDatabase } from '../../support/database.ts';
import { openHouse, type House, type Visitor } from '../../support/house.ts';
import { layOut, oneMark, type LaidOut } from '../../support/laidOut.ts';
import { inMemory, inPostgres, type OneEnsemble } from '../../support/oneEnsemble.ts';

const NAME = 'Xanthippe Quillfeather';
const HAND = { factor: 0.8713, shortFourth: true };

let database: TestDatabase;
beforeAll(async () => {
  database = await createTestDatabase();
}, 60_000);
afterAll(() => database.drop());

async function jsonIn(zip: Buffer): Promise<Record<string, unknown>> {
  const file = await new Promise<yauzl.ZipFile>((resolve, reject) => yauzl.fromBuffer(zip, { lazyEntries: true }, (fault, opened) => (fault ? reject(fault) : resolve(opened))));
  const stream = await new Promise<NodeJS.ReadableStream>((resolve, reject) => {
    file.once('entry', (entry: yauzl.Entry) => file.openReadStream(entry, (fault, opened) => (fault ? reject(fault) : resolve(opened))));
    file.readEntry();
  });
  return JSON.parse(await text(stream)) as Record<string, unknown>;
}

describe.each([
  ['in memory', () => inMemory()],
  ['in PostgreSQL', () => inPostgres(database)],
])('a person who is erased, %s', { timeout: 120_000 }, (where, open) => {
  let house: House;
  let store: OneEnsemble;
  let laid: LaidOut;
  let person: { id: string; name: string };
  let own: Visitor;
  let colleague: Visitor;
  const log = async () => (await store.log.entries(laid.part, 0, 500))!.entries;
  const ask = async (visitor: Visitor, name: string, input: unknown) => expect((await visitor.post(`/api/parts/${laid.part}/operations/${name}`, { operation: randomUUID(), input })).status).toBe(200);
  beforeAll(async () => {
    store = await open();
    house = await openHouse(store);
    laid = await layOut(store);
    person = await store.people.add(NAME, false);
    await store.sections.seat(laid.section, { seats: [{ seat: '1o', person: laid.principal.id }, { seat: '1i', person: person.id }], principal: laid.principal.id });
    [own, colleague] = [await house.signIn(person), await house.signIn(laid.principal)];
    const slip = randomUUID();
    // A process that has only just begun on a busy machine may have its hands full.
    while ((await own.get('/api/me')).status === 503) await new Promise((resolve) => setTimeout(resolve, 200));
    await ask(own, 'propose', oneMark(slip));
    await ask(own, 'comment', { id: randomUUID(), measure: 1, text: 'My very own words' });
    await ask(colleague, 'comment', { id: randomUUID(), measure: 1, text: `Ask @${NAME} first`, mentions: [{ person: person.id, name: NAME }] });
    await ask(colleague, 'adopt', { proposal: slip, revision: 1, why: '' });
    await own.put('/api/me/hand', HAND);
    await own.put('/api/me/letters', { address: 'xq@example.org', language: 'de' });
    await own.put(`/api/parts/${laid.part}/seen`, { seq: 2 });
    await own.post(`/api/parts/${laid.part}/errata`, { measure: 1, says: 'c', should: 'd' });
    const librarian = await house.signIn(laid.librarian);
    await librarian.post(`/api/works/${laid.work}/keep`, { ensemble: 'Us', conductor: 'V', season: '2026' });
    await librarian.post(`/api/people/${person.id}/link`);
  }, 120_000);
  afterAll(async () => {
    await house.close();
    await store.close();
  });

  it('is given before that everything that is kept about them, by name of work and part', async () => {
    const reply = await own.get('/api/me/kept');
    expect([reply.status, reply.headers['content-type']]).toEqual([200, 'application/zip']);
    const kept = await jsonIn(reply.raw);
    expect(kept).toMatchObject({ name: NAME, hand: HAND, ensembles: [{ seats: [{ seat: '1i' }], letters: { address: 'xq@example.org' }, read: [{ work: 'Spring', upTo: 2 }], wrongNotes: [{ says: 'c' }] }] });
    const { written, told } = (kept.ensembles as { written: { name: string; work: string }[]; told: { kind: string }[] }[])[0]!;
    expect(written.map(({ name, work }) => `${name} in ${work}`)).toEqual(['propose in Spring', 'comment in Spring']);
    expect(told.map(({ kind }) => kind)).toContain('personAdded');
    expect(kept.sessions).toHaveLength(1);
    // Of nobody else's hand or letters.
    expect(JSON.stringify(await jsonIn((await colleague.get('/api/me/kept')).raw))).not.toMatch(/0\.8713|xq@example/);
  });

  it('types their name for it, or nothing happens', async () => {
    expect((await own.post('/api/me/erase', { name: 'Somebody' })).json.code).toBe('WRONG_NAME');
    expect((await own.get('/api/me')).json.name).toBe(NAME);
    // The librarian may not, while they are here.
    expect((await (await house.signIn(laid.librarian)).post(`/api/people/${person.id}/erase`, { name: NAME })).status).toBe(404);
  });

  it('is a former player everywhere; the log is the same but for the name, and comes to the same marks; whoever has the part open hears of it', async () => {
    const before = await log();
    const renewed: string[] = [];
    const ended: string[] = [];
    house.deps.notices.listen({ renewed: (parts) => renewed.push(...parts), signedOut: (session) => ended.push(session) });
    expect((await own.post('/api/me/erase', { name: NAME, comments: where === 'in memory' })).json).toEqual({ erased: true });
    expect([renewed, ended.length]).toEqual([[laid.part], 1]);
    expect((await own.get('/api/me')).status).toBe(401);
    const after = await log();
    const nameless = (value: unknown) => JSON.parse(JSON.stringify(value).replaceAll(NAME, 'Former player')) as typeof before;
    const silent = (rows: typeof before) => rows.map(({ input: _, events, ...row }) => ({ ...row, events: events.filter(({ type }) => type !== 'commented') }));
    expect(silent(after)).toEqual(silent(nameless(before)));
    if (where === 'in PostgreSQL') expect(after).toEqual(nameless(before));
    expect(replay(after).ink).toEqual(replay(nameless(before)).ink);
    expect(replay(after).ink).toHaveLength(1);
    expect(JSON.stringify(after).includes('My very own words')).toBe(where === 'in PostgreSQL');
    // Held ready by the server before: read anew.
    const { state } = (await colleague.get(`/api/parts/${laid.part}`)).json;
    expect(JSON.stringify(state)).not.toContain('Xanthippe');
    expect(state).toEqual(replay(after));
  });

  it('is named in no set of the archive, no list, no trail; that it was done is told', async () => {
    const librarian = await house.signIn(laid.librarian);
    const [kept] = await store.archive.sets();
    for (const value of [await store.archive.set(kept!.id), (await librarian.get('/api/shelf')).json, (await librarian.get('/api/trail')).json, (await librarian.get(`/api/works/${laid.work}/errata`)).json]) expect(JSON.stringify(value)).not.toContain('Xanthippe');
    expect((await store.archive.set(kept!.id))!.parts[0]!.log.length).toBeGreaterThan(0);
    expect((await librarian.get('/api/trail?kind=erased')).json.rows).toMatchObject([{ by: { name: 'Former player' }, about: { id: person.id, name: 'Former player' } }]);
    expect([await store.people.byId(person.id), await store.door.hand(person.id), await store.attention.letters(person.id)]).toEqual([null, null, null]);
    // The next batch goes on where the log stands.
    await ask(colleague, 'comment', { id: randomUUID(), measure: 1, text: 'Onwards' });
  });
});

describe('in the database', { timeout: 120_000 }, () => {
  async function as<T>(connection: pg.ClientConfig, work: (client: pg.Client) => Promise<T>): Promise<T> {
    const client = new pg.Client(connection);
    await client.connect();
    try {
      return await work(client);
    } finally {
      await client.end();
    }
  }

  it('no row of any table holds the name any more: a backup taken now has it nowhere', async () => {
    const store = await inPostgres(database);
    const laid = await layOut(store);
    const person = await store.people.add('Ludmilla Vanishing', true);
    const state = { ...replay([]), comments: { x: { made: { by: person.id, name: person.name } } } };
    await store.log.commit(laid.part, { head: 0, revision: 1, rewritten: 0 }, [], [], () => ({ entries: [{ seq: 1, operation: randomUUID(), name: 'lock', input: {}, events: [{ type: 'locked' }], by: person.id, byName: person.name, at: new Date().toISOString() }], refused: [], shelf: { stage: 'pulled', locked: true, open: 0 }, snapshot: { ...state, seq: 1 } as never }));
    expect(await store.log.snapshot(laid.part, PROTOCOL)).not.toBeNull();
    const whole = async () => {
      let lines = '';
      for await (const line of backupLines(database.owner, new Date())) lines += line;
      return lines;
    };
    expect(await whole()).toContain('Ludmilla');
    await store.door.erase(person.id, laid.librarian.id, false);
    expect(await whole()).not.toContain('Ludmilla');
    // Again is no harm.
    expect((await store.door.erase(person.id, laid.librarian.id, false)).sessions).toEqual([]);
    await store.close();
  });

  it('the log is changed by nobody else: neither role may, and the function is the door’s alone', async () => {
    for (const connection of [database.app, database.door]) await expect(as(connection, (client) => client.query("update operation set by_name = 'x'"))).rejects.toThrow(/permission denied/);
    await expect(as(database.app, (client) => client.query("select * from erase_person('x', 'y', false)"))).rejects.toThrow(/permission denied/);
    for (const name of ['said_without(null, null, false)', 'events_without(null, null, false)', 'row_without(null, null, false)']) await expect(as(database.door, (client) => client.query(`select ${name}`))).rejects.toThrow(/permission denied/);
    // What the function may see, its caller does not see afterwards.
    expect(await as(database.door, async (client) => {
      await client.query('begin');
      await client.query("select * from erase_person('nobody', 'nobody', false)");
      return (await client.query("select current_setting('bowline.whole', true) as whole")).rows[0];
    })).toEqual({ whole: '' });
  });

  it('a hand is seen by its owner alone: the door sees none without being told whose it is, the library’s role may not look at all', async () => {
    const store = await inPostgres(database);
    const [one, other] = [await store.people.add('Hand One', false), await store.people.add('Hand Two', true)];
    await store.door.setHand(one.id, HAND);
    const hands = (whose: string | null) => as(database.door, async (client) => {
      if (whose !== null) await client.query("select set_config('bowline.person', $1, false)", [whose]);
      return (await client.query('select person_id from hand')).rows;
    });
    expect([await hands(null), await hands(other.id), await hands(one.id)]).toEqual([[], [], [{ person_id: one.id }]]);
    await expect(as(database.app, (client) => client.query('select 1 from hand'))).rejects.toThrow(/permission denied/);
    await expect(as(database.door, async (client) => {
      await client.query("select set_config('bowline.person', $1, false)", [other.id]);
      await client.query('insert into hand (person_id, factor, short_fourth) values ($1, 1, false) on conflict (person_id) do update set factor = 1', [one.id]);
    })).rejects.toThrow(/row-level security/);
    await store.close();
  });
});
