import { spawn } from 'node:child_process';
import { createInterface } from 'node:readline';
import type { OneEnsemble } from '../../../support/oneEnsemble.ts';
import { freePort, startServer, type ServerProcess } from '../../../support/serverProcess.ts';
import { openInstallation } from '../installation.ts';

/** Servers on one database, and the store of an ensemble in it. Whoever is at one of them stays there, as sticky sessions have it. */
export interface Servers {
  addresses: string[];
  pids: number[];
  store: OneEnsemble;
  close(): Promise<void>;
}

/** So many server processes; several tell each other what was written by way of a Redis of their own. */
export async function openServers(count: number): Promise<Servers> {
  const installation = await openInstallation();
  const redis = count > 1 ? await startRedis() : null;
  const servers: { address: string; process: ServerProcess }[] = [];
  // One after another, so that the first has made the tables when the others come.
  for (let nth = 0; nth < count; nth += 1) {
    const port = await freePort();
    const env = { PORT: String(port), HOST: '127.0.0.1', DATABASE_URL: installation.address, BOWLINE_DATA: `${installation.folder}/own${nth}`, ...(redis ? { REDIS_URL: redis.address } : {}) };
    servers.push({ address: `http://127.0.0.1:${port}`, process: await startServer(env) });
  }
  return {
    addresses: servers.map(({ address }) => address),
    pids: servers.map(({ process }) => process.pid),
    store: installation.store,
    async close() {
      for (const { process } of servers) process.kill('SIGTERM');
      await Promise.all(servers.map(({ process }) => process.ended));
      redis?.stop();
      await installation.close();
    },
  };
}

async function startRedis(): Promise<{ address: string; stop(): void }> {
  const port = await freePort();
  const child = spawn('redis-server', ['--port', String(port), '--bind', '127.0.0.1', '--save', '', '--appendonly', 'no'], { stdio: ['ignore', 'pipe', 'inherit'] });
  await new Promise<void>((resolve, reject) => {
    child.once('error', () => reject(new Error('redis-server is not installed. On Debian: apt-get install redis-server')));
    createInterface({ input: child.stdout }).on('line', (line) => line.includes('Ready to accept connections') && resolve());
  });
  return { address: `redis://127.0.0.1:${port}`, stop: () => void child.kill() };
}
