import type { OneEnsemble } from '../../../support/oneEnsemble.ts';
import { freePort, startServer } from '../../../support/serverProcess.ts';
import { openInstallation } from '../installation.ts';

/** Servers on one database, and the store of an ensemble in it. Whoever is at one of them stays there, as sticky sessions have it. */
export interface Servers {
  addresses: string[];
  pids: number[];
  store: OneEnsemble;
  close(): Promise<void>;
}

export async function oneServer(): Promise<Servers> {
  const installation = await openInstallation();
  const port = await freePort();
  const server = await startServer({ PORT: String(port), HOST: '127.0.0.1', DATABASE_URL: installation.address, BOWLINE_DATA: `${installation.folder}/own` });
  return {
    addresses: [`http://127.0.0.1:${port}`],
    pids: [server.pid],
    store: installation.store,
    async close() {
      server.kill('SIGTERM');
      await server.ended;
      await installation.close();
    },
  };
}
