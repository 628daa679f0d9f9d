import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { startCluster } from '../../../server/database/cluster.ts';
import { APP, DATABASE, OWNER } from '../../../server/database/connection.ts';
import { migrate } from '../../../server/database/migrate.ts';
import { createDatabase, grantToApp } from '../../../server/database/roles.ts';
import { openPostgres } from '../../../server/store/postgres.ts';
import type { Store } from '../../../server/store/store.ts';

/** Where the database is entered, as `pg` and the programs of PostgreSQL want it. */
export interface Entrance {
  host: string;
  port: number;
  user: string;
  database: string;
}

/** A database as it is in use: what is acknowledged is on disk. Servers may be started on it, as many as wanted. */
export interface Installation {
  folder: string;
  entrance: Entrance;
  /** For DATABASE_URL. */
  address: string;
  store: Store;
  close(): Promise<void>;
}

export async function openInstallation(): Promise<Installation> {
  const folder = mkdtempSync(join(tmpdir(), 'bowline-load-'));
  const cluster = await startCluster({ folder: join(folder, 'data'), settings: ['max_connections=120'] });
  await createDatabase(cluster);
  const owner = cluster.connection(OWNER, DATABASE);
  await migrate(owner);
  await grantToApp(owner);
  const entrance = cluster.connection(APP, DATABASE) as Entrance;
  const store = openPostgres(entrance);
  return {
    folder,
    entrance,
    address: `postgresql://${OWNER}@localhost/${DATABASE}?host=${encodeURIComponent(entrance.host)}&port=${entrance.port}`,
    store,
    async close() {
      await store.close();
      await cluster.stop();
      rmSync(folder, { recursive: true, force: true });
    },
  };
}
