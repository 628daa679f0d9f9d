import { PrismaPg } from '@prisma/adapter-pg';
import pg from 'pg';
import { createPostgresArchive } from './postgresArchive.ts';
import { createPostgresAttention } from './postgresAttention.ts';
import { createPostgresErrata } from './postgresErrata.ts';
import { createPostgresLibrary } from './postgresLibrary.ts';
import { createPostgresLog } from './postgresLog.ts';
import { createPostgresPeople } from './postgresPeople.ts';
import { createPostgresSections } from './postgresSections.ts';
import { PrismaClient } from './prisma-client/client.ts';
import type { Store } from './store.ts';

/** Settings for `pg`: an address, or host, port, user and database. */
export function openPostgres(connection: pg.PoolConfig): Store {
  const pool = new pg.Pool({ ...connection, max: 16, connectionTimeoutMillis: 5000, statement_timeout: 15_000, idle_in_transaction_session_timeout: 15_000 });
  // A connection that breaks while idle is replaced by the next one asked for.
  pool.on('error', () => {});
  const prisma = new PrismaClient({ adapter: new PrismaPg(pool) });
  return {
    people: createPostgresPeople(prisma),
    sections: createPostgresSections(prisma),
    library: createPostgresLibrary(prisma, pool),
    log: createPostgresLog(pool),
    attention: createPostgresAttention(prisma, pool),
    archive: createPostgresArchive(pool),
    errata: createPostgresErrata(prisma),
    ping: async () => void (await pool.query('select 1')),
    close: async () => {
      await prisma.$disconnect();
      await pool.end();
    },
  };
}
