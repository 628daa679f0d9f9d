import { spawn } from 'node:child_process';
import { existsSync, mkdirSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import pg from 'pg';
import { afterAll, describe, expect, it } from 'vitest';
import { startCluster, type Cluster } from '../../../server/database/cluster.ts';
import { BOOTSTRAP } from '../../../server/database/connection.ts';
import { lockFolder } from '../../../server/database/folderLock.ts';
import { birthOf, gone, isAlive } from '../../../server/database/processes.ts';

const root = mkdtempSync(join(tmpdir(), 'bowline-cluster-'));
const running = new Set<Cluster>();
afterAll(async () => {
  await Promise.all([...running].map((cluster) => cluster.stop()));
  rmSync(root, { recursive: true, force: true });
});

async function start(folder: string, report?: (line: string) => void): Promise<Cluster> {
  const cluster = await startCluster({ folder, settings: ['fsync=off'], ...(report ? { report } : {}) });
  running.add(cluster);
  return cluster;
}
async function ask(cluster: Cluster, sql: string): Promise<Record<string, unknown>[]> {
  const client = new pg.Client(cluster.connection(BOOTSTRAP, 'postgres'));
  client.on('error', () => {});
  await client.connect();
  try {
    return (await client.query(sql)).rows as Record<string, unknown>[];
  } finally {
    await client.end().catch(() => {});
  }
}
const until = async (holds: () => boolean) => {
  while (!holds()) await new Promise((resolve) => setTimeout(resolve, 20));
};

describe('the PostgreSQL that came along', () => {
  it('starts in a new folder, keeps what is written over a stop, and stops wholly', async () => {
    const folder = join(root, 'plain');
    const first = await start(folder);
    await ask(first, "create table kept (a text); insert into kept values ('Grüße');");
    const pid = first.pid()!;
    await first.stop();
    expect(isAlive(pid)).toBe(false);
    expect(existsSync(join(folder, 'pg/postmaster.pid'))).toBe(false);
    const second = await start(folder);
    expect(await ask(second, 'select a from kept')).toEqual([{ a: 'Grüße' }]);
    await second.stop();
  });

  it('opens no port, and its socket is for nobody else', async () => {
    const cluster = await start(join(root, 'quiet'));
    expect(await ask(cluster, "select setting from pg_settings where name = 'listen_addresses'")).toEqual([{ setting: '' }]);
    expect(await ask(cluster, "select pg_encoding_to_char(encoding) as encoding, datlocale from pg_database where datname = 'postgres'")).toEqual([{ encoding: 'UTF8', datlocale: 'C.UTF-8' }]);
    await cluster.stop();
  });

  it('killed by somebody, it is started again and says so', async () => {
    const lines: string[] = [];
    const cluster = await start(join(root, 'killed'), (line) => lines.push(line));
    await ask(cluster, 'create table kept (a int); insert into kept values (1);');
    process.kill(cluster.pid()!, 'SIGKILL');
    await until(() => lines.includes('PostgreSQL is back.'));
    expect(lines[0]).toBe('PostgreSQL has stopped; starting it again.');
    expect(await ask(cluster, 'select a from kept')).toEqual([{ a: 1 }]);
    await cluster.stop();
    expect(isAlive(cluster.pid()!)).toBe(false);
  });

  it('left running by a Bowline that was killed, it is stopped and started anew', async () => {
    const folder = join(root, 'left');
    const program = `import { startCluster } from './server/database/cluster.ts'; console.log((await startCluster({ folder: ${JSON.stringify(folder)} })).pid());`;
    const lost = spawn(process.execPath, ['--import', 'tsx', '--input-type=module', '-e', `${program} setInterval(() => {}, 1000);`], { stdio: ['ignore', 'pipe', 'inherit'] });
    const pid = Number(String(await new Promise((resolve) => lost.stdout.once('data', resolve))));
    lost.kill('SIGKILL');
    await gone(lost.pid!, 5000);
    expect(isAlive(pid)).toBe(true);
    const next = await start(folder);
    expect(isAlive(pid) && birthOf(pid) !== 'gone').toBe(false);
    expect(await ask(next, 'select 1 as one')).toEqual([{ one: 1 }]);
    await next.stop();
  });

  it('a note of a process whose number another program has now does not stand in the way', async () => {
    const folder = join(root, 'stale');
    await (await start(folder)).stop();
    writeFileSync(join(folder, 'pg/postmaster.pid'), `${process.pid}\n${join(folder, 'pg')}\n1\n5432\n\n\n`);
    const cluster = await start(folder);
    expect(await ask(cluster, 'select 1 as one')).toEqual([{ one: 1 }]);
    await cluster.stop();
  });

  it('works under a path too long for a socket', async () => {
    const folder = join(root, 'long'.repeat(30));
    const cluster = await start(folder);
    expect(await ask(cluster, 'select 1 as one')).toEqual([{ one: 1 }]);
    await cluster.stop();
  });

  it('a folder of another version, or one that cannot be started, is refused in one line that says why', async () => {
    const other = join(root, 'other');
    mkdirSync(join(other, 'pg'), { recursive: true });
    writeFileSync(join(other, 'pg/PG_VERSION'), '15\n');
    await expect(start(other)).rejects.toThrow(/written by PostgreSQL 15.*BOWLINE_DATA/);
    const broken = join(root, 'broken');
    await (await start(broken)).stop();
    writeFileSync(join(broken, 'pg/postgresql.conf'), 'shared_buffers = "a lot"\n');
    await expect(start(broken)).rejects.toThrow(/PostgreSQL does not start.*FATAL.*postgresql.conf/);
  }, 60_000);
});

describe('the lock of a data folder', () => {
  it('is refused to a second process by name, and free when the first has gone, however it went', async () => {
    const folder = join(root, 'locked');
    mkdirSync(folder);
    const holder = spawn('sleep', ['60']);
    writeFileSync(join(folder, 'bowline.pid'), JSON.stringify({ pid: holder.pid, birth: birthOf(holder.pid!) }));
    expect(() => lockFolder(folder)).toThrow(`The data folder ${folder} is in use by process ${holder.pid}.`);
    holder.kill('SIGKILL');
    await gone(holder.pid!, 5000);
    const free = lockFolder(folder);
    expect(JSON.parse(readFileSync(join(folder, 'bowline.pid'), 'utf8')).pid).toBe(process.pid);
    free();
    expect(existsSync(join(folder, 'bowline.pid'))).toBe(false);
  });

  it('is not held up by a number that another program has now, nor by a note cut short', () => {
    const folder = join(root, 'reused');
    mkdirSync(folder);
    writeFileSync(join(folder, 'bowline.pid'), JSON.stringify({ pid: process.ppid, birth: 'long ago' }));
    lockFolder(folder)();
    writeFileSync(join(folder, 'bowline.pid'), '{"pid":');
    lockFolder(folder)();
  });
});
