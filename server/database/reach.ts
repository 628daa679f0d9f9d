import { existsSync, mkdirSync, realpathSync } from 'node:fs';
import { join } from 'node:path';
import { findBinaries } from './binaries.ts';
import { startCluster } from './cluster.ts';
import { acting, APP, DATABASE, DOOR, OWNER, type Connection } from './connection.ts';
import { holds, lockFolder } from './folderLock.ts';
import { createDatabase, grantToServer } from './roles.ts';
import { chooseRunAs } from './runAs.ts';
import { SOCKET_PORT, socketFolder } from './socketFolder.ts';
import { Unstartable } from './unstartable.ts';

/** A database reached from beside the server. */
export interface Reached {
  /** May do everything in it. */
  owner: Connection;
  /** What the server itself enters as. */
  entrances: { app: Connection; door: Connection };
  /** Gives the server its rights in tables that came meanwhile. */
  grant(): Promise<void>;
  close(): Promise<void>;
}

/**
 * The database of the settings: the one that was named; or the one in the data folder, beside the Bowline that runs on it or started for as long as it is needed.
 * `use`: "read" needs a folder that was used before and does not mind a running Bowline, "fill" makes the folder and needs it alone.
 */
export async function reachDatabase({ databaseUrl, data }: { databaseUrl: string | null; data: string }, use: 'read' | 'fill'): Promise<Reached> {
  if (databaseUrl !== null) return { owner: { connectionString: databaseUrl }, entrances: { app: acting(databaseUrl, APP), door: acting(databaseUrl, DOOR) }, grant: async () => {}, close: async () => {} };
  if (use === 'read' && !existsSync(join(data, 'pg'))) throw new Unstartable(`There is no Bowline in the data folder ${data}. Name its folder with BOWLINE_DATA.`);
  if (use === 'read' && holds(data)) return beside(data);
  mkdirSync(data, { recursive: true, mode: 0o700 });
  const unlock = lockFolder(data);
  try {
    const cluster = await startCluster({ folder: data });
    await createDatabase(cluster);
    const owner = cluster.connection(OWNER, DATABASE);
    return {
      owner,
      entrances: { app: cluster.connection(APP, DATABASE), door: cluster.connection(DOOR, DATABASE) },
      grant: () => grantToServer(owner),
      async close() {
        await cluster.stop();
        unlock();
      },
    };
  } catch (reason) {
    unlock();
    throw reason;
  }
}

async function beside(data: string): Promise<Reached> {
  const { owner } = chooseRunAs((await findBinaries()).postgres);
  const as = (user: string): Connection => ({ host: socketFolder(realpathSync(data), owner), port: SOCKET_PORT, user, database: DATABASE });
  return { owner: as(OWNER), entrances: { app: as(APP), door: as(DOOR) }, grant: async () => {}, close: async () => {} };
}
