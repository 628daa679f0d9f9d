import { openSync, closeSync, rmSync, statfsSync, writeSync } from 'node:fs';
import { join } from 'node:path';
import { setTimeout as wait } from 'node:timers/promises';
import { Redis } from 'ioredis';
import pg from 'pg';
import { BOOTSTRAP } from '../../../../../server/database/connection.ts';
import type { Misfortune, Scene } from './misfortune.ts';

/** The database and Redis: killed, emptied, without room on the disk. */
export function toStores({ premises, luck, disk, troubles }: Scene): Misfortune[] {
  const { cluster, redis } = premises;
  let redisHit = false;

  async function databaseBack(): Promise<void> {
    for (;;) {
      const client = new pg.Client({ ...cluster.connection(BOOTSTRAP, 'postgres'), connectionTimeoutMillis: 1000 });
      client.on('error', () => {});
      const there = await client.connect().then(() => client.query('select 1')).then(() => true, () => false);
      await client.end().catch(() => {});
      if (there) return;
      await wait(100);
    }
  }

  async function fill(): Promise<void> {
    const path = join(disk!, 'ballast');
    const file = openSync(path, 'w');
    try {
      const chunk = Buffer.alloc(1024 * 1024);
      for (;;) writeSync(file, chunk);
    } catch {
      // Full, as it should be.
    } finally {
      closeSync(file);
    }
    await wait(1000 + luck.below(1500));
    rmSync(path, { force: true });
    await databaseBack();
  }

  const killDatabase = async () => {
    const pid = cluster.pid();
    if (pid) process.kill(pid, 'SIGKILL');
    await wait(50);
    await databaseBack();
  };

  const ofRedis = (work: () => Promise<unknown>) => () => {
    if (!redis?.running || redisHit) return null;
    redisHit = true;
    return { at: 'redis', over: work().finally(() => (redisHit = false)) };
  };

  return [
    { kind: 'database killed', often: 3, strike: () => ({ at: 'database', over: troubles.during(killDatabase()) }) },
    { kind: 'redis killed', often: 2, strike: ofRedis(async () => {
      await redis!.kill();
      await wait(luck.below(3000));
      await redis!.start();
    }) },
    { kind: 'redis emptied', often: 1, strike: ofRedis(async () => {
      const client = new Redis(redis!.address, { lazyConnect: true, retryStrategy: () => null });
      client.on('error', () => {});
      await client.connect().then(() => client.flushall()).catch(() => {});
      client.disconnect();
    }) },
    { kind: 'redis held still', often: 1, strike: ofRedis(async () => {
      redis!.freeze();
      await wait(1000 + luck.below(5000));
      redis!.thaw();
    }) },
    { kind: 'disk full', often: 1, strike: () => (disk && statfsSync(disk).bavail > 0 ? { at: 'database', over: troubles.during(fill()) } : null) },
  ];
}
