import { existsSync, mkdirSync, writeFileSync } from 'node:fs';
import type { NetConnectOpts } from 'node:net';
import { join } from 'node:path';
import pg from 'pg';
import { startCluster, type Cluster } from '../../../../server/database/cluster.ts';
import { APP, BOOTSTRAP, DATABASE, DOOR, OWNER } from '../../../../server/database/connection.ts';
import { createDatabase } from '../../../../server/database/roles.ts';
import { freePort } from '../../../support/serverProcess.ts';
import { answersOk, createMember, type Member } from '../../../support/topology/child.ts';
import { createRedis } from '../../../support/topology/redis.ts';
import { openProxy, type Proxy } from '../proxy.ts';

const ROOT = join(import.meta.dirname, '../../../..');
const HOST = '127.0.0.1';
/** PostgreSQL keeps little of its own log, so that a small disk is enough. */
const SMALL = ['max_connections=200', 'max_wal_size=160MB', 'min_wal_size=32MB', 'wal_init_zero=on', 'checkpoint_timeout=60s'];

/** One server and the lines that lead to it and from it, each of which can be cut, mute or slow. */
export interface Station {
  server: Member;
  port: number;
  database: Proxy;
  redis: Proxy | null;
  /** A proxy in front would see that it does not answer. */
  silent: boolean;
  /** Sets its wall clock off by so many milliseconds. */
  shiftClock(ms: number): void;
}

/** Three servers, Redis, PostgreSQL and workers as processes, every line between them through a proxy of ours. */
export interface Premises {
  stations: Station[];
  workers: Member[];
  redis: Member | null;
  cluster: Cluster;
  /** A door for one person: always the same server while that one takes connections, then the next. */
  door(first: number): Promise<Proxy>;
  close(): Promise<void>;
}

export const hasWorker = (): boolean => existsSync(join(ROOT, 'server/worker.ts'));

export async function openPremises(folder: string, disk: string, options: { servers: number; workers: number; redis: boolean }): Promise<Premises> {
  mkdirSync(folder, { recursive: true });
  const cluster = await startCluster({ folder: disk, settings: SMALL });
  await createDatabase(cluster);
  await letOwnerAct(cluster);
  const redis = options.redis ? await createRedis(folder) : null;
  await redis?.start();
  const { host, port } = cluster.connection(OWNER, DATABASE) as { host: string; port: number };
  const database: NetConnectOpts = { path: join(host, `.s.PGSQL.${port}`) };
  const lines: Proxy[] = [];
  const line = async (target: number | (() => NetConnectOpts[])): Promise<Proxy> => {
    const opened = await openProxy(target);
    lines.push(opened);
    return opened;
  };
  const urlOf = (to: Proxy) => `postgresql://${OWNER}@${HOST}:${to.port}/${DATABASE}`;

  async function station(index: number): Promise<Station> {
    const toDatabase = await line(() => [database]);
    const toRedis = redis ? await line(Number(new URL(redis.address).port)) : null;
    const own = await freePort();
    const clock = join(folder, `clock-${index}`);
    writeFileSync(clock, '0');
    const env = { HOST, PORT: String(own), DATABASE_URL: urlOf(toDatabase), BOWLINE_JOBS: '0', BOWLINE_CLOCK_FILE: clock, ...(toRedis ? { REDIS_URL: `redis://${HOST}:${toRedis.port}` } : {}) };
    const address = `http://${HOST}:${own}`;
    const server = createMember({
      name: `server ${index + 1}`,
      address,
      command: process.execPath,
      args: ['--import', 'tsx', '--import', './tests/support/shiftedClock.ts', 'server/main.ts'],
      env,
      ready: async (said) => said.some((one) => one.endsWith('Ctrl-C stops Bowline.')) && (await answersOk(`${address}/api/health`)),
    });
    return { server, port: own, database: toDatabase, redis: toRedis, silent: false, shiftClock: (ms) => writeFileSync(clock, String(ms)) };
  }

  async function worker(index: number): Promise<Member> {
    const env = { DATABASE_URL: urlOf(await line(() => [database])) };
    return createMember({ name: `worker ${index + 1}`, address: '', command: process.execPath, args: ['--import', 'tsx', 'server/worker.ts'], env, ready: (said) => said.length > 0 });
  }

  const stations: Station[] = [];
  for (let index = 0; index < options.servers; index++) stations.push(await station(index));
  const workers: Member[] = [];
  for (let index = 0; hasWorker() && index < options.workers; index++) workers.push(await worker(index));
  const premises: Premises = {
    stations,
    workers,
    redis,
    cluster,
    door: (first) =>
      line(() => {
        const inOrder = stations.map((_, index) => stations[(first + index) % stations.length]!);
        return [...inOrder.filter(({ silent }) => !silent), ...inOrder.filter(({ silent }) => silent)].map(({ port: to }) => ({ port: to, host: HOST }));
      }),
    async close() {
      for (const { server } of stations) server.thaw();
      await Promise.all([...stations.map(({ server }) => server), ...workers].map((member) => (member.running ? member.stop() : 0)));
      await redis?.kill();
      await Promise.all(lines.map((one) => one.close()));
      await cluster.stop();
    },
  };
  try {
    // The first alone, so that migrations are there when the others come.
    for (const member of [stations[0]!.server, ...stations.slice(1).map(({ server }) => server), ...workers]) await member.start();
    return premises;
  } catch (reason) {
    await premises.close();
    throw reason;
  }
}

/** The servers come in as the owner and act as the two roles that they work as. */
async function letOwnerAct(cluster: Cluster): Promise<void> {
  const client = new pg.Client(cluster.connection(BOOTSTRAP, 'postgres'));
  await client.connect();
  await client.query(`grant ${APP}, ${DOOR} to ${OWNER}`);
  await client.end();
}
