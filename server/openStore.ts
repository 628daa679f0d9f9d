import { mkdirSync } from 'node:fs';
import type { Closing } from './closing.ts';
import { startCluster } from './database/cluster.ts';
import { acting, APP, DATABASE, DOOR, OWNER } from './database/connection.ts';
import { lockFolder } from './database/folderLock.ts';
import { migrate } from './database/migrate.ts';
import { createDatabase, grantToServer, letActAs } from './database/roles.ts';
import { Unstartable } from './database/unstartable.ts';
import type { Settings } from './settings.ts';
import { openPostgres } from './store/postgres.ts';
import type { Installation } from './store/installation.ts';

/** The store on the database that was named, or on the PostgreSQL that came along, started in the data folder. */
export async function openStore(settings: Settings, closing: Closing, report: (line: string) => void): Promise<Installation> {
  const store = settings.databaseUrl === null ? await embedded(settings.data, closing, report) : await named(settings.databaseUrl);
  closing.add(() => store.close());
  return store;
}

async function embedded(folder: string, closing: Closing, report: (line: string) => void): Promise<Installation> {
  try {
    mkdirSync(folder, { recursive: true, mode: 0o700 });
  } catch (reason) {
    throw new Unstartable(`The data folder ${folder} cannot be made (${(reason as NodeJS.ErrnoException).code}). Choose another with BOWLINE_DATA.`);
  }
  closing.add(lockFolder(folder));
  closing.check();
  const cluster = await startCluster({ folder, report });
  closing.add(() => cluster.stop());
  closing.check();
  await createDatabase(cluster);
  const owner = cluster.connection(OWNER, DATABASE);
  await migrate(owner);
  await grantToServer(owner);
  return openPostgres({ app: cluster.connection(APP, DATABASE), door: cluster.connection(DOOR, DATABASE) });
}

async function named(connectionString: string): Promise<Installation> {
  try {
    await migrate({ connectionString });
    await grantToServer({ connectionString });
    await letActAs({ connectionString });
  } catch (reason) {
    if (reason instanceof Unstartable) throw reason;
    throw new Unstartable(`The database of DATABASE_URL cannot be used: ${(reason as Error).message || (reason as { code?: string }).code}. Check the address and that PostgreSQL runs.`);
  }
  return openPostgres({ app: acting(connectionString, APP), door: acting(connectionString, DOOR) });
}

