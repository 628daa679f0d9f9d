import { PrismaPg } from '@prisma/adapter-pg';
import type pg from 'pg';
import { migrationNames } from '../database/migrate.ts';
import type { Installation } from './installation.ts';
import { openPool } from './openPool.ts';
import { createPostgresArchive } from './postgresArchive.ts';
import { createPostgresAttempts } from './postgresAttempts.ts';
import { createPostgresAttention } from './postgresAttention.ts';
import { createPostgresDoor } from './postgresDoor.ts';
import { createPostgresErrata } from './postgresErrata.ts';
import { createPostgresJobs } from './postgresJobs.ts';
import { createPostgresLibrary } from './postgresLibrary.ts';
import { createPostgresLog } from './postgresLog.ts';
import { createPostgresPeople } from './postgresPeople.ts';
import { openPostgresQueue, type PostgresQueue } from './postgresQueue.ts';
import { createPostgresSections } from './postgresSections.ts';
import { createPostgresTrail } from './postgresTrail.ts';
import { findIn } from './postgresWhereabouts.ts';
import { PrismaClient } from './prisma-client/client.ts';
import { alone } from './alone.ts';
import { scopedPool } from './scopedPool.ts';
import type { Store } from './store.ts';

/** Connections to music, shared by all ensembles, and to the door. Chosen, not measured. */
const MOST = { app: 16, door: 4 };

/** Two ways into one database, each a role of its own: `app` for what ensembles keep, `door` for who there is and how they come in. */
export interface Entrances {
  app: pg.PoolConfig;
  door: pg.PoolConfig;
}

export function openPostgres({ app, door }: Entrances): Installation {
  const pool = openPool(app, MOST.app);
  const queue = openPostgresQueue(pool, app);
  const doorPool = openPool(door, MOST.door);
  const needed = migrationNames();
  const doorPrisma = new PrismaClient({ adapter: new PrismaPg(doorPool) });
  return {
    door: createPostgresDoor(doorPrisma),
    attempts: createPostgresAttempts(doorPool),
    queue,
    of: (ensemble) => storeOf(scopedPool(pool, ensemble), ensemble, queue),
    alone: (what, work) => alone(doorPool, what, work),
    async lacks() {
      const { rows } = await doorPool.query<{ name: string }>('select migration_name as name from _prisma_migrations where finished_at is not null and rolled_back_at is null');
      const there = new Set(rows.map(({ name }) => name));
      return needed.filter((name) => !there.has(name));
    },
    connections: () => ({ app: countsOf(pool), door: countsOf(doorPool) }),
    ping: async () => void (await Promise.all([pool.query('select 1'), doorPool.query('select 1')])),
    close: async () => {
      await queue.close();
      await doorPrisma.$disconnect();
      await Promise.all([pool.end(), doorPool.end()]);
    },
  };
}

const countsOf = ({ totalCount, idleCount, waitingCount }: pg.Pool) => ({ open: totalCount, idle: idleCount, waiting: waitingCount });

function storeOf(pool: pg.Pool, ensemble: string, queue: PostgresQueue): Store {
  const prisma = new PrismaClient({ adapter: new PrismaPg(pool) });
  return {
    people: createPostgresPeople(prisma, pool),
    sections: createPostgresSections(prisma),
    library: createPostgresLibrary(prisma, pool),
    log: createPostgresLog(pool),
    attention: createPostgresAttention(prisma, pool),
    archive: createPostgresArchive(pool),
    errata: createPostgresErrata(prisma),
    jobs: createPostgresJobs(pool, queue, ensemble),
    trail: createPostgresTrail(pool),
    find: findIn(pool),
    close: () => prisma.$disconnect(),
  };
}
