import { randomUUID } from 'node:crypto';
import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, afterEach, beforeAll, describe, expect, it } from 'vitest';
import { createCounts } from '../../../server/limits/counts.ts';
import { hintsThrough } from '../../../server/redis/hints.ts';
import { openRedis, type SharedRedis } from '../../../server/redis/openRedis.ts';
import { createTestDatabase, type TestDatabase } from '../../support/database.ts';
import { openHouse, type House } from '../../support/house.ts';
import { layOut, oneMark, type LaidOut } from '../../support/laidOut.ts';
import { inPostgres } from '../../support/oneEnsemble.ts';
import { listenTo, until, type Listener } from '../../support/listener.ts';
import type { Member } from '../../support/topology/child.ts';
import { lacks } from '../../support/topology/programs.ts';
import { createRedis } from '../../support/topology/redis.ts';

/** So rare that what is heard is a hint; `quick` beats instead. */
const NEVER = 3_600_000;

describe.skipIf(lacks('redis-server'))('several servers of one library', { timeout: 60_000 }, () => {
  let database: TestDatabase, folder: string, redis: Member, laid: LaidOut;
  const servers: { house: House; redis: SharedRedis; address: string; said: string[] }[] = [];
  const open: Listener[] = [];

  async function server(heartbeat: number): Promise<void> {
    const said: string[] = [];
    const shared = openRedis(redis.address, (line) => said.push(line));
    const house = await openHouse(await inPostgres(database), {}, { heartbeat, adapter: hintsThrough(shared), redis: shared, counts: createCounts(shared) });
    await house.app.listen({ port: 0, host: '127.0.0.1' });
    servers.push({ house, redis: shared, said, address: `http://127.0.0.1:${(house.app.server.address() as { port: number }).port}` });
    await until(() => shared.up());
  }
  beforeAll(async () => {
    database = await createTestDatabase();
    folder = mkdtempSync(join(tmpdir(), 'bowline-redis-'));
    redis = await createRedis(folder);
    await redis.start();
    for (const heartbeat of [NEVER, NEVER, 200]) await server(heartbeat);
    laid = await layOut(servers[0]!.house.store);
  });
  afterEach(() => open.splice(0).forEach(({ socket }) => socket.disconnect()));
  afterAll(async () => {
    for (const { house, redis: shared } of servers) {
      await house.close();
      shared.close();
      await house.store.close();
    }
    await redis.stop();
    rmSync(folder, { recursive: true, force: true });
    await database.drop();
  });

  async function at(index: number, person: { id: string }): Promise<Listener & { cookie: string }> {
    const { house, address } = servers[index]!;
    const visitor = await house.signIn(person);
    const listener = await listenTo(address, visitor.cookie(), laid.part);
    open.push(listener);
    return { ...listener, cookie: visitor.cookie() };
  }
  const write = async (listener: Listener): Promise<number> => {
    const answer = await listener.ask('submit', { part: laid.part, operation: randomUUID(), name: 'propose', input: oneMark() });
    expect(answer).toMatchObject({ ok: true });
    return answer.entry.seq;
  };
  const heard = (listener: Listener, seq: number) => listener.heard.logged.filter((entry) => entry.seq === seq).length;
  /** A row reaches the other server's followers by a hint alone; the first may come before they listen, so one is written until it does. */
  async function hintsArrive(writer: Listener, reader: Listener): Promise<void> {
    for (;;) {
      const seq = await write(writer);
      const end = performance.now() + 1000;
      await until(() => heard(reader, seq) > 0 || performance.now() > end);
      if (heard(reader, seq) > 0) return;
    }
  }

  it('what is written on one is heard on the other at once, and once', async () => {
    const [writer, reader] = [await at(0, laid.principal), await at(1, laid.player)];
    await hintsArrive(writer, reader);
    const seqs = [await write(writer), await write(writer)];
    await until(() => seqs.every((seq) => heard(reader, seq) > 0 && heard(writer, seq) > 0));
    expect(seqs.map((seq) => [heard(reader, seq), heard(writer, seq)])).toEqual([[1, 1], [1, 1]]);
    expect(reader.heard.head).toEqual([]);
  });

  it('two that write to one part at once take turns: every row is there, each with a place of its own', async () => {
    const writers = [await at(0, laid.principal), await at(1, laid.player)];
    const before = (await servers[0]!.house.store.log.heads([laid.part])).get(laid.part)!;
    const seqs = await Promise.all(writers.flatMap((writer) => Array.from({ length: 40 }, () => write(writer))));
    expect(seqs.toSorted((a, b) => a - b)).toEqual(Array.from({ length: 80 }, (_, index) => before + 1 + index));
  });

  it('where people look is seen on the other, until they leave', async () => {
    const [one, two] = [await at(0, laid.principal), await at(1, laid.player)];
    await one.ask('looking', { part: laid.part, measure: 3 });
    await until(() => two.heard.present.at(-1)?.some(({ name, measure }) => name === laid.principal.name && measure === 3) ?? false);
    one.socket.disconnect();
    await until(() => two.heard.present.at(-1)?.length === 0);
    expect(two.heard.present.at(-1)).toEqual([]);
  });

  it('a change of seating on one is told to those who follow on the other', async () => {
    const follower = await at(1, laid.player);
    const librarian = await servers[0]!.house.signIn(laid.librarian);
    await librarian.put(`/api/sections/${laid.section}/settings`, {});
    await until(() => follower.heard.renewed > 0);
    expect(follower.heard.renewed).toBe(1);
  });

  it('who signs out on one loses the line they have on the other at once', async () => {
    const { socket, cookie } = await at(1, laid.player);
    const cut = new Promise((resolve) => socket.once('disconnect', resolve));
    const { app } = servers[0]!.house;
    expect((await app.inject({ method: 'POST', url: '/api/sign-out', headers: { host: 'localhost', origin: 'http://localhost', cookie } })).statusCode).toBe(200);
    expect(await cut).toBe('io server disconnect');
  });

  it('counts hold over both', async () => {
    const [one, two] = servers.map(({ redis: shared }) => createCounts(shared));
    await one!.add('both', 60, 3);
    expect((await two!.add('both', 60)).count).toBe(4);
    expect((await one!.read('both', 60)).count).toBe(4);
  });

  it('with Redis killed each goes on by itself, the heartbeat brings what hints would have; Redis back, hints are back', async () => {
    const [writer, reader, beaten] = [await at(0, laid.principal), await at(1, laid.player), await at(2, laid.player)];
    await redis.kill();
    await until(() => servers.every(({ redis: shared }) => !shared.up()));
    const seq = await write(writer);
    expect(heard(writer, seq) || (await until(() => heard(writer, seq) > 0), 1)).toBe(1);
    await until(() => beaten.heard.head.includes(seq));
    expect(heard(reader, seq) + heard(beaten, seq)).toBe(0);
    const cut = new Promise((resolve) => beaten.socket.once('disconnect', resolve));
    await servers[0]!.house.app.inject({ method: 'POST', url: '/api/sign-out', headers: { host: 'localhost', origin: 'http://localhost', cookie: beaten.cookie } });
    expect(await cut).toBe('io server disconnect');
    expect((await createCounts(servers[0]!.redis).add('alone', 60)).count).toBe(1);
    expect((await servers[0]!.house.visitor().get('/api/ready')).json).toMatchObject({ ready: true, redis: false });
    await redis.start();
    await until(() => servers.every(({ redis: shared }) => shared.up()));
    await hintsArrive(writer, reader);
// On a machine that stands still for a while Redis may seem away once more; it is said once each way all the same.
    const pair = [expect.stringMatching(/^Redis is away/), 'Redis is back.'];
    for (const { said } of servers) expect(said).toEqual(Array.from({ length: Math.max(1, said.length / 2) }, () => pair).flat());
    expect(servers.flatMap(({ house }) => house.lines)).toEqual([]);
  });

  it('a Redis that hangs holds nobody up', async () => {
    const writer = await at(0, laid.principal);
    redis.freeze();
    try {
      const seq = await write(writer);
      await until(() => heard(writer, seq) > 0);
      expect((await createCounts(servers[0]!.redis).add('hangs', 60)).count).toBe(1);
    } finally {
      redis.thaw();
    }
    await until(() => servers.every(({ redis: shared }) => shared.up()));
    await hintsArrive(writer, await at(1, laid.player));
  });
});
