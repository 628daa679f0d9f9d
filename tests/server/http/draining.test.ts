import pg from 'pg';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { migrationNames } from '../../../server/database/migrate.ts';
import { createDraining } from '../../../server/http/draining.ts';
import { createTestDatabase, type TestDatabase } from '../../support/database.ts';
import { openHouse, type House } from '../../support/house.ts';
import { layOut, type LaidOut } from '../../support/laidOut.ts';
import { listenTo, until } from '../../support/listener.ts';
import { inPostgres, type OneEnsemble } from '../../support/oneEnsemble.ts';

let database: TestDatabase, store: OneEnsemble, laid: LaidOut;
beforeAll(async () => {
  database = await createTestDatabase();
  store = await inPostgres(database);
  laid = await layOut(store);
});
afterAll(async () => {
  await store.close();
  await database.drop();
});

async function open(): Promise<{ house: House; address: string; draining: ReturnType<typeof createDraining> }> {
  const draining = createDraining();
  const house = await openHouse(store, {}, { draining });
  await house.app.listen({ port: 0, host: '127.0.0.1' });
  return { house, draining, address: `http://127.0.0.1:${(house.app.server.address() as { port: number }).port}` };
}

/** Something that ends when it is told to. */
function held(): { work: Promise<void>; end(): void } {
  let end = () => {};
  const work = new Promise<void>((resolve) => (end = resolve));
  return { work, end: () => end() };
}

describe('a server that leaves', () => {
  it('says first that it is not ready, and still answers', async () => {
    const { house, draining, address } = await open();
    expect(await (await fetch(`${address}/api/ready`)).json()).toMatchObject({ ready: true });
    draining.begin();
    const reply = await fetch(`${address}/api/ready`);
    expect([reply.status, await reply.json()]).toEqual([503, expect.objectContaining({ ready: false, code: 'LEAVING' })]);
    expect((await fetch(`${address}/api/health`)).status).toBe(200);
    const visitor = await house.signIn(laid.player);
    const answer = await fetch(`${address}/api/shelf`, { headers: { cookie: visitor.cookie() } });
    expect([answer.status, answer.headers.get('connection')]).toEqual([200, 'close']);
    await house.close();
  });

  it('is not ready while the database lacks a change that it counts on', async () => {
    const { installation } = store;
    expect(await installation.lacks()).toEqual([]);
    const house = await openHouse(store, {}, { lacks: () => installation.lacks() });
    expect((await house.visitor().get('/api/ready')).status).toBe(200);
    const owner = new pg.Client(database.owner);
    await owner.connect();
    const last = migrationNames().at(-1)!;
    await owner.query('update _prisma_migrations set rolled_back_at = now() where migration_name = $1', [last]);
    expect(await installation.lacks()).toEqual([last]);
    expect(await house.visitor().get('/api/ready')).toMatchObject({ status: 503, json: { ready: false, code: 'OLD_SHELVES' } });
    await owner.query('update _prisma_migrations set rolled_back_at = null where migration_name = $1', [last]);
    await owner.end();
    expect((await house.visitor().get('/api/ready')).status).toBe(200);
    await house.close();
  });

  it('takes up no new line, ends what is under way, answers it, and only then lets its lines go', async () => {
    const { house, draining, address } = await open();
    const visitor = await house.signIn(laid.player);
    const line = await listenTo(address, visitor.cookie(), laid.part);
    const lost: string[] = [];
    line.socket.on('disconnect', (reason) => lost.push(reason));
    const slow = held();
    const { ofPart } = store.sections;
    let underWay = 0;
    store.sections.ofPart = async (part) => {
      underWay += 1;
      await slow.work;
      return ofPart(part);
    };
    const other = await house.signIn(laid.principal);
    const request = fetch(`${address}/api/parts/${laid.part}`, { headers: { cookie: other.cookie() } }).then(({ status }) => status);
    await line.ask('unfollow', { part: laid.part });
    const followed = line.ask('follow', { part: laid.part, after: 0 });
    await until(() => underWay >= 2);
    const left = draining.leave(house.app.server, 20_000);
    await expect(fetch(`${address}/api/health`)).rejects.toThrow();
    expect(lost).toEqual([]);
    slow.end();
    expect(await request).toBe(200);
    expect(await followed).toMatchObject({ ok: true });
    await left;
    expect(await new Promise((resolve) => (lost.length ? resolve(lost[0]) : line.socket.once('disconnect', resolve)))).toBe('transport close');
    store.sections.ofPart = ofPart;
    await house.close();
  });

  it('waits for nothing longer than it was told to', async () => {
    const draining = createDraining();
    draining.underWay(new Promise(() => {}));
    const steps: string[] = [];
    draining.add(() => steps.push('lines let go'));
    await draining.leave({ close: () => steps.push('door closed') }, 30);
    expect(steps).toEqual(['door closed', 'lines let go']);
  });
});

describe('what one server at a time may do', () => {
  it('is done by one; another finds it taken, and may when the first is done, or gone', async () => {
    const other = await inPostgres(database);
    const first = held();
    let within = false;
    const doing = store.installation.alone('letters', async () => {
      within = true;
      await first.work;
    });
    await until(() => within);
    const done: string[] = [];
    expect(await other.installation.alone('letters', async () => void done.push('both'))).toBe(false);
    expect(await other.installation.alone('something else', async () => void done.push('else'))).toBe(true);
    first.end();
    expect(await doing).toBe(true);
    expect(await other.installation.alone('letters', async () => void done.push('after'))).toBe(true);
    await expect(other.installation.alone('letters', () => Promise.reject(new Error('broken')))).rejects.toThrow('broken');
    expect(await store.installation.alone('letters', async () => void done.push('after a fault'))).toBe(true);
    expect(done).toEqual(['else', 'after', 'after a fault']);
    await other.close();
  });
});
