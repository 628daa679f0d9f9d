import pg from 'pg';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { createTestDatabase, type TestDatabase } from '../../support/database.ts';
import { inMemory, inPostgres, type OneEnsemble } from '../../support/oneEnsemble.ts';

let database: TestDatabase;
beforeAll(async () => {
  database = await createTestDatabase();
});
afterAll(() => database.drop());

describe.each([
  ['in memory', () => inMemory()],
  ['in PostgreSQL', () => inPostgres(database)],
])('the trail %s', (_where, open) => {
  let store: OneEnsemble;
  beforeAll(async () => {
    store = await open();
  });
  afterAll(() => store.close());

  it('shows the last row first, page by page, each with who did it by the name they had', async () => {
    const mona = await store.people.add('Mona', false);
    for (const work of ['one', 'two', 'three']) await store.trail.tell({ kind: 'handedOut', facts: { work } }, mona);
    const first = await store.trail.rows({ kind: 'handedOut', limit: 2, within: null });
    const rest = await store.trail.rows({ kind: 'handedOut', limit: 2, within: null, before: first.at(-1)!.id });
    expect([...first, ...rest].map(({ facts, by }) => [facts.work, by])).toEqual(['three', 'two', 'one'].map((work) => [work, { id: mona.id, name: 'Mona' }]));
  });

  it('of a section’s business shows what is in those sections and about those people, and nothing else', async () => {
    const [leader, other] = [await store.people.add('Leader', false), await store.people.add('Other', false)];
    await store.trail.tell({ kind: 'seatingChanged', section: 'violas' }, leader);
    await store.trail.tell({ kind: 'seatingChanged', section: 'cellos' }, leader);
    await store.trail.tell({ kind: 'roleGiven', about: other }, leader);
    await store.trail.tell({ kind: 'roleGiven', about: leader }, other);
    const rows = await store.trail.rows({ person: leader.id, limit: 10, within: { sections: ['violas'], people: [other.id] } });
    expect(rows.map(({ kind, section, about }) => [kind, section ?? about?.name])).toEqual([['roleGiven', 'Other'], ['seatingChanged', 'violas']]);
  });

  it('hears of the door in every ensemble of the person, or in the one that it is about, and in no other', async () => {
    const person = await store.people.add('Door', false);
    const [second, third] = [(await store.door.addEnsemble('Second'))!, (await store.door.addEnsemble('Third'))!];
    await store.door.join(second.id, person.id, { librarian: false, deputy: false });
    const told = async () => Promise.all([store, store.installation.of(second.id), store.installation.of(third.id)].map(async ({ trail }) => (await trail.rows({ person: person.id, limit: 9, within: null })).filter(({ kind }) => kind.startsWith('sign')).map(({ kind, facts }) => `${kind} ${facts.way}`)));
    await store.door.tell(person.id, { kind: 'signInFailed', facts: { way: 'password' } });
    await store.door.tell(person.id, { kind: 'signedIn', facts: { way: 'link' } }, second.id);
    expect(await told()).toEqual([['signInFailed password'], ['signedIn link', 'signInFailed password'], []]);
  });
});

describe('in the database', () => {
  const refused = /permission denied/;
  let store: OneEnsemble;
  beforeAll(async () => {
    store = await inPostgres(database);
    await store.trail.tell({ kind: 'sectionAdded' }, null);
  });
  afterAll(() => store.close());

  async function as<T>(connection: pg.ClientConfig, ensemble: string, work: (client: pg.Client) => Promise<T>): Promise<T> {
    const client = new pg.Client(connection);
    await client.connect();
    try {
      await client.query("select set_config('bowline.ensemble', $1, false)", [ensemble]);
      return await work(client);
    } finally {
      await client.end();
    }
  }

  it.each(["update trail set kind = 'x'", 'delete from trail', 'truncate trail'])('neither role of the server may: %s', async (sql) => {
    await expect(as(database.app, store.ensemble, (client) => client.query(sql))).rejects.toThrow(refused);
    await expect(as(database.door, store.ensemble, (client) => client.query(sql))).rejects.toThrow(refused);
  });

  it('rows of one ensemble are neither seen nor written from another, and the door reads none', async () => {
    const other = (await store.door.addEnsemble('Elsewhere'))!;
    const count = (client: pg.Client) => client.query<{ n: number }>('select count(*)::int as n from trail').then(({ rows }) => rows[0]!.n);
    expect(await as(database.app, store.ensemble, count)).toBeGreaterThan(0);
    expect(await as(database.app, other.id, count)).toBe(0);
    await expect(as(database.app, other.id, (client) => client.query("insert into trail (ensemble_id, id, kind) values ($1, 'x', 'y')", [store.ensemble]))).rejects.toThrow(/row-level security/);
    await expect(as(database.door, store.ensemble, count)).rejects.toThrow(refused);
  });
});
