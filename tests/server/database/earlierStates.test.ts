import { randomUUID } from 'node:crypto';
import { readdirSync, statSync } from 'node:fs';
import { join } from 'node:path';
import { Readable } from 'node:stream';
import { setTimeout as wait } from 'node:timers/promises';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { replay } from '../../../core/agreement/replay.ts';
import { PROTOCOL } from '../../../core/agreement/wire/socket.ts';
import { putBack } from '../../../server/database/backup/putBack.ts';
import { migrationNames } from '../../../server/database/migrate.ts';
import { grantToServer } from '../../../server/database/roles.ts';
import * as documents from '../../../server/jobs/documents.ts';
import { createEmptyDatabase, rowsIn, type TestDatabase } from '../../support/database.ts';
import { openHouse, tokenOf, type House, type Reply, type Visitor } from '../../support/house.ts';
import { inPostgres, type OneEnsemble } from '../../support/oneEnsemble.ts';
import { askAll, type Asking, type Role } from './earlier/askings.ts';
import { asSaidNow } from './earlier/since.ts';
import { answersOf, keptStates, linesOf, migrationsOf, STATES } from './earlier/states.ts';

/** Dozens of documents are made in it, on a machine that may have other things to do. */
const PATIENT = 600_000;

interface Row {
  part: string;
  head: number;
}

/** On a machine with its hands full the library says so, and is asked again. */
async function calmly(ask: () => Promise<Reply>): Promise<Reply> {
  for (;;) {
    const reply = await ask();
    if (reply.status !== 503) return reply;
    await wait(200);
  }
}

describe('states of the database that came before this one', () => {
  it('are all kept: each change of the database is tried on what the version before it wrote', () => {
    const names = migrationNames();
    const kept = keptStates().map(migrationsOf);
    for (const migrations of kept) expect(names).toEqual(expect.arrayContaining(migrations));
    // By how many there were: two changes of one morning came in the other way round than they are called.
    const untried = names.slice(1).filter((_, index) => !kept.some(({ length }) => length === index + 1));
    expect(untried, 'Nobody has tried these changes on a library of the version before. In a worktree of the last commit without the change, after npm ci and npm run -s generate there, run here: npm run -s keep:state -- NAME FOLDER (tests/server/database/earlier/keep.ts says more), and commit the two files it leaves.').toEqual([]);
  });

  it('each with its rows and its answers, and small', () => {
    const files = readdirSync(STATES).sort();
    expect(files).toEqual(keptStates().flatMap((state) => [`${state}.answers.json.br`, `${state}.rows.br`]).sort());
    for (const file of files) expect(statSync(join(STATES, file)).size, file).toBeLessThan(150_000);
  });
});

describe.each(keptStates())('a library as it was at "%s"', (state) => {
  const then = answersOf(state);
  let database: TestDatabase;
  let store: OneEnsemble;
  let house: House;
  let now: Asking[];
  let who: Record<Role, Visitor>;
  beforeAll(async () => {
    database = await createEmptyDatabase();
    await putBack(database.owner, Readable.from(linesOf(state)));
    await grantToServer(database.owner);
    store = await inPostgres(database);
    house = await openHouse(store, { documents, now: () => new Date(then.at) });
    const at = (role: Role) => house.visitor(then.cookies[role]);
    who = { librarian: at('librarian'), principal: at('principal'), player: at('player') };
    now = await askAll(async (as, path) => {
      const { status, headers, raw } = await calmly(() => who[as].get(path));
      return { status, type: String(headers['content-type']), bytes: raw };
    });
  }, PATIENT);
  afterAll(async () => {
    await house.close();
    await store.close();
    await database.drop();
  });
  const parts = (): Promise<Row[]> => rowsIn(database, 'select id as part, head from part order by id');

  it('was brought up to this program', async () => {
    const applied = await rowsIn<{ name: string }>(database, 'select migration_name as name from _prisma_migrations order by 1');
    expect(applied.map(({ name }) => name)).toEqual(migrationNames());
  });

  // Sessions of then hold: everything is asked with the cookies of then.
  it.each(then.askings.map((asking) => [asking.as, asking.path, asking] as const))('the %s asks %s and hears what was said then', (as, path, asking) => {
    const again = now.find((one) => one.as === as && one.path === path)?.answer;
    const said = asSaidNow(asking);
    if (typeof said === 'string') expect(again).toBe(said);
    else expect(again).toMatchObject(said as object);
  });

  it('every log, replayed, is what the server says of the part, and snapshots of another protocol are left alone', async () => {
    const protocols = await rowsIn<{ protocol: number }>(database, 'select protocol from snapshot');
    expect(protocols.length).toBeGreaterThan(0);
    for (const { part, head } of await parts()) {
      const { entries } = (await store.log.entries(part, 0, 10_000))!;
      expect(entries).toHaveLength(head);
      expect((await house.authority.current(part))!.state).toEqual(replay(entries));
      if (protocols.every(({ protocol }) => protocol !== PROTOCOL)) expect(await store.log.snapshot(part, PROTOCOL)).toBeNull();
    }
  });

  it('a link of then that nobody followed signs in once, one that was followed does not, and an ended session stays ended', async () => {
    for (const [role, link] of Object.entries(then.unusedLinks)) {
      const visitor = house.visitor();
      const first = await visitor.post('/api/sign-in', { token: tokenOf(link) });
      expect(first).toMatchObject({ status: 200, json: { librarian: role === 'librarian' } });
      expect((await visitor.get('/api/shelf')).json.programmes).toHaveLength(1);
      expect((await house.visitor().post('/api/sign-in', { token: tokenOf(link) })).status).toBe(410);
    }
    expect((await house.visitor().post('/api/sign-in', { token: tokenOf(then.usedLink) })).status).toBe(410);
    expect((await house.visitor(then.endedCookie).get('/api/me')).status).toBe(401);
  });

  it('lies in one ensemble, and whoever belongs to another sees nothing of it', async () => {
    expect(await store.door.ensembles()).toHaveLength(1);
    const other = (await store.door.addEnsemble('Harbour Players'))!;
    const stranger = await store.installation.of(other.id).people.add('Nils Corvander', true);
    const visitor = await house.signIn(stranger);
    expect((await visitor.get('/api/shelf')).json).toMatchObject({ programmes: [], sections: [], people: [{ name: 'Nils Corvander' }] });
    const told = await Promise.all(then.askings.filter(({ path }) => !/^\/api\/(me|shelf)/.test(path)).map(async ({ path }) => [path, await calmly(() => visitor.get(path))] as const));
    for (const [path, { status, json }] of told) expect([path, status, path === '/api/archive' ? json : null]).toEqual([path, path === '/api/archive' ? 200 : 404, path === '/api/archive' ? [] : null]);
  });

  it('an operation of then, sent again, keeps its answer, and the next is written after the last', async () => {
    const [{ part, head }] = (await parts()).filter(({ head: rows }) => rows > 200) as [Row];
    const [refused] = await rowsIn<{ operation: string; refusal: { code: string } }>(database, `select operation, refusal from refused_operation where name = 'castVote'`);
    const input = { proposal: randomUUID(), revision: 1, measure: 1, vote: 'for' };
    expect((await who.principal.post(`/api/parts/${part}/operations/castVote`, { operation: refused!.operation, input })).json).toMatchObject({ ok: false, refusal: refused!.refusal });
    const said = { id: randomUUID(), measure: 1, proposal: null, answers: null, text: 'And on we go.' };
    expect((await who.player.post(`/api/parts/${part}/operations/comment`, { operation: randomUUID(), input: said })).json).toMatchObject({ ok: true, entry: { seq: head + 1 } });
  });
});
