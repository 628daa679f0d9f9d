import { isAlive } from '../../../server/database/processes.ts';
import type { Chance } from '../../support/chance.ts';
import { postgresOf, startServer, type ServerProcess } from '../../support/serverProcess.ts';
import type { Proxy } from './proxy.ts';

export interface Faults {
  counts: { serverKills: number; postgresKills: number; restarts: number };
  /** One thing goes wrong; resolves when the server has been started again, if it had to be. */
  strike(): Promise<void>;
  server(): ServerProcess;
}

/** Everything that goes wrong, by chance: the line, the server, its PostgreSQL. */
export function misfortune(luck: Chance, proxy: Proxy, data: string, env: Record<string, string>, first: ServerProcess): Faults {
  let server = first;
  const counts = { serverKills: 0, postgresKills: 0, restarts: 0 };

  function killPostgres(): void {
    const pid = postgresOf(data);
    if (!isAlive(pid)) return;
    process.kill(pid, 'SIGKILL');
    counts.postgresKills += 1;
  }

  async function killServer(alsoPostgres: boolean): Promise<void> {
    server.kill('SIGKILL');
    await server.ended;
    counts.serverKills += 1;
    if (alsoPostgres) killPostgres();
    server = await startServer(env);
    counts.restarts += 1;
  }

  const strikes: (() => unknown)[] = [
    () => proxy.cutAll(),
    () => proxy.cutOne(luck.below(8)),
    () => [proxy.cutOne(luck.below(8)), proxy.cutOne(luck.below(8)), proxy.cutOne(luck.below(8))],
    () => proxy.swallow(100 + luck.below(400)),
    () => proxy.swallow(100 + luck.below(400)),
    () => {
      proxy.delay(20 + luck.below(250));
      setTimeout(() => proxy.delay(0), 800);
    },
    () => {
      proxy.refuse(true);
      proxy.cutAll();
      setTimeout(() => proxy.refuse(false), 600);
    },
    killPostgres,
    killPostgres,
    () => killServer(false),
    () => killServer(true),
  ];
  let order: (() => unknown)[] = [];

  return {
    counts,
    server: () => server,
    async strike() {
      // Drawn without putting back, so that a short run meets every kind too.
      if (order.length === 0) order = [...strikes].sort(() => luck.next() - 0.5);
      await order.pop()!();
    },
  };
}
