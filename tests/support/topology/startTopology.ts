import { existsSync, mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import pg from 'pg';
import { startCluster, type Cluster } from '../../../server/database/cluster.ts';
import { APP, BOOTSTRAP, type Connection, DATABASE, DOOR, OWNER } from '../../../server/database/connection.ts';
import { createDatabase } from '../../../server/database/roles.ts';
import { freePort } from '../serverProcess.ts';
import { answersOk, createMember, type Member } from './child.ts';
import { program } from './programs.ts';
import { createRedis } from './redis.ts';

const ROOT = join(import.meta.dirname, '../../..');
const HOST = '127.0.0.1';

export interface TopologyOptions {
  servers: number;
  workers?: number;
  redis?: boolean;
  proxy?: boolean;
  /** The first server fills the library with the demo. */
  demo?: boolean;
  /** Settings for every server and worker. */
  env?: Record<string, string>;
  /** Further `name=value` settings of PostgreSQL, like fsync=off. */
  database?: string[];
}

export interface Topology {
  /** What people type: the proxy, or without one the first server. */
  address: string;
  servers: Member[];
  workers: Member[];
  redis: Member | null;
  proxy: Member | null;
  /** PostgreSQL; killed, it comes back by itself. */
  database: { pid(): number | undefined; kill(): void; connection(user?: string): Connection };
  /** The sign-in link that was printed last for a role ("librarian", "principal", "player"). */
  link(role: string): string;
  close(): Promise<void>;
}

/** The topology of docker-compose.yml as processes of this machine: PostgreSQL, Redis, servers behind the proxy, workers. Everything is ready when it resolves. */
export async function startTopology(options: TopologyOptions): Promise<Topology> {
  const folder = mkdtempSync(join(tmpdir(), 'bowline-topology-'));
  const cluster = await startCluster({ folder, settings: ['max_connections=200', ...(options.database ?? [])] });
  const killCluster = () => cluster.pid() && process.kill(cluster.pid()!, 'SIGQUIT');
  process.on('exit', killCluster);
  await createDatabase(cluster);
  await letOwnerAct(cluster);
  const redis = options.redis ? await createRedis(folder) : null;
  const ports = await Promise.all(Array.from({ length: options.servers + 1 }, freePort));
  const front = ports.pop()!;
  const address = `http://${HOST}:${options.proxy ? front : ports[0]!}`;
  const env = { DATABASE_URL: urlOf(cluster), BOWLINE_ORIGIN: address, ...(redis ? { REDIS_URL: redis.address } : {}), ...(options.proxy ? { BOWLINE_PROXIES: HOST } : {}), ...options.env };
  const servers = ports.map((port, index) => serverMember(index, port, env, options.demo === true && index === 0));
  const workers = Array.from({ length: options.workers ?? 0 }, (_, index) => workerMember(index, env));
  const proxy = options.proxy ? proxyMember(front, ports) : null;
  const topology: Topology = {
    address,
    servers,
    workers,
    redis,
    proxy,
    database: { pid: () => cluster.pid(), kill: () => void (cluster.pid() && process.kill(cluster.pid()!, 'SIGKILL')), connection: (user = OWNER) => cluster.connection(user, DATABASE) },
    link(role) {
      const line = servers.flatMap(({ lines }) => lines).findLast((one) => one.startsWith(`Sign in as ${role} `));
      return /(http\S+)$/.exec(line ?? '')?.[1] ?? '';
    },
    async close() {
      await Promise.all([...servers, ...workers].map((member) => member.stop()));
      await Promise.all([proxy?.kill(), redis?.kill()]);
      await cluster.stop();
      process.off('exit', killCluster);
      rmSync(folder, { recursive: true, force: true });
    },
  };
  try {
    await redis?.start();
    // The first alone, so that migrations and the demo are there when the others come.
    await servers[0]!.start();
    await Promise.all([...servers.slice(1), ...workers].map((member) => member.start()));
    await proxy?.start();
  } catch (reason) {
    await topology.close();
    throw reason;
  }
  return topology;
}

/** As the role of a database that is a house's own: it makes the tables and may act as the two roles that the server works as. */
async function letOwnerAct(cluster: Cluster): Promise<void> {
  const client = new pg.Client(cluster.connection(BOOTSTRAP, 'postgres'));
  await client.connect();
  try {
    await client.query(`grant ${APP}, ${DOOR} to ${OWNER}`);
  } finally {
    await client.end();
  }
}

/** By PostgreSQL's socket: no port of PostgreSQL is open. */
function urlOf(cluster: Cluster): string {
  const { host, port } = cluster.connection(OWNER, DATABASE) as { host: string; port: number };
  return `postgresql://localhost/${DATABASE}?${new URLSearchParams({ host, port: String(port), user: OWNER }).toString()}`;
}

function serverMember(index: number, port: number, env: Record<string, string>, demo: boolean): Member {
  const address = `http://${HOST}:${port}`;
  const ready = async (lines: readonly string[]) => lines.some((line) => line.endsWith('Ctrl-C stops Bowline.')) && (await answersOk(`${address}/api/health`));
  return createMember({ name: `server ${index + 1}`, address, command: process.execPath, args: ['--import', 'tsx', 'server/main.ts', ...(demo ? ['--demo'] : [])], env: { ...env, HOST, PORT: String(port) }, ready });
}

function workerMember(index: number, env: Record<string, string>): Member {
  if (!existsSync(join(ROOT, 'server/worker.ts'))) throw new Error('There is no server/worker.ts to start.');
  return createMember({ name: `worker ${index + 1}`, address: '', command: process.execPath, args: ['--import', 'tsx', 'server/worker.ts'], env, ready: (lines) => lines.length > 0 });
}

/** The very file that docker-compose.yml mounts. */
function proxyMember(port: number, servers: readonly number[]): Member {
  const address = `http://${HOST}:${port}`;
  const env = Object.fromEntries(servers.map((one, index) => [`BOWLINE_SERVER_${index + 1}`, `${HOST}:${one}`]));
  return createMember({ name: 'proxy', address, command: program('haproxy'), args: ['-db', '-f', join(ROOT, 'server/proxy/haproxy.cfg')], env: { ...env, BOWLINE_BIND: `${HOST}:${port}` }, ready: () => answersOk(`${address}/api/health`) });
}
