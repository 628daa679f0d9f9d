import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import pg from 'pg';
import { startCluster } from '../../../server/database/cluster.ts';
import { APP, BOOTSTRAP, type Connection, DATABASE, DOOR, OWNER } from '../../../server/database/connection.ts';
import { migrate } from '../../../server/database/migrate.ts';
import { createDatabase, grantToServer } from '../../../server/database/roles.ts';
import { openPostgres } from '../../../server/store/postgres.ts';
import { oneEnsemble, type OneEnsemble } from '../../support/oneEnsemble.ts';

/** Where the database is entered, as `pg` and the programs of PostgreSQL want it. */
export interface Entrance {
  host: string;
  port: number;
  user: string;
  database: string;
}

export interface Ways {
  app: Entrance;
  door: Entrance;
}

/** A database as it is in use: what is acknowledged is on disk. Servers may be started on it, as many as wanted. */
export interface Installation {
  folder: string;
  ways: Ways;
  /** For DATABASE_URL. */
  address: string;
  store: OneEnsemble;
  close(): Promise<void>;
}

export async function openInstallation(): Promise<Installation> {
  const folder = mkdtempSync(join(tmpdir(), 'bowline-load-'));
  const cluster = await startCluster({ folder: join(folder, 'data'), settings: ['max_connections=120'] });
  await createDatabase(cluster);
  const owner = cluster.connection(OWNER, DATABASE);
  await migrate(owner);
  await grantToServer(owner);
  await letServersAct(cluster.connection(BOOTSTRAP, 'postgres'));
  const entrance = (role: string) => cluster.connection(role, DATABASE) as Entrance;
  const ways = { app: entrance(APP), door: entrance(DOOR) };
  const store = await oneEnsemble(openPostgres(ways));
  return {
    folder,
    ways,
    address: `postgresql://${OWNER}@localhost/${DATABASE}?host=${encodeURIComponent(ways.app.host)}&port=${ways.app.port}`,
    store,
    async close() {
      await store.close();
      await cluster.stop();
      rmSync(folder, { recursive: true, force: true });
    },
  };
}

/** Servers enter as whoever owns the tables and act as the two roles, as with any database that is named by DATABASE_URL. */
async function letServersAct(bootstrap: Connection): Promise<void> {
  const client = new pg.Client(bootstrap);
  await client.connect();
  await client.query(`grant ${APP}, ${DOOR} to ${OWNER}`);
  await client.end();
}
