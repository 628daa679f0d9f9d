import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import type { TestProject } from 'vitest/node';
import { startCluster } from '../../server/database/cluster.ts';
import { BOOTSTRAP, type Connection, OWNER } from '../../server/database/connection.ts';
import { migrate } from '../../server/database/migrate.ts';
import { createDatabase, grantToServer } from '../../server/database/roles.ts';

export const TEMPLATE = 'template_bowline';

declare module 'vitest' {
  interface ProvidedContext {
    /** Where the run's PostgreSQL is entered as its bootstrap user. */
    bootstrap: Connection;
  }
}

/** One PostgreSQL a run; nothing in it outlives the run, so it need not reach the disk. */
export default async function setup(project: TestProject): Promise<() => Promise<void>> {
  const folder = mkdtempSync(join(tmpdir(), 'bowline-tests-'));
  const cluster = await startCluster({ folder, settings: ['fsync=off', 'synchronous_commit=off', 'full_page_writes=off', 'max_connections=150'] });
  await createDatabase(cluster, TEMPLATE);
  const owner = cluster.connection(OWNER, TEMPLATE);
  await migrate(owner);
  await grantToServer(owner);
  project.provide('bootstrap', cluster.connection(BOOTSTRAP, 'postgres'));
  return async () => {
    await cluster.stop();
    rmSync(folder, { recursive: true, force: true });
  };
}
