import type pg from 'pg';
import { onOne } from './transaction.ts';

type Scoped = pg.PoolClient & { ensemble?: string };

/**
 * The pool as one ensemble sees it: every connection taken from it has been told the ensemble that row-level security goes by. A connection remembers what
 * it was told last, so that a batch costs no statement more where the same ensemble goes on.
 */
export function scopedPool(pool: pg.Pool, ensemble: string): pg.Pool {
  async function connect(): Promise<pg.PoolClient> {
    const client: Scoped = await pool.connect();
    if (client.ensemble === ensemble) return client;
    try {
      // Forgotten first: should the statement break, nobody takes this connection for what it was.
      delete client.ensemble;
      await client.query({ name: 'ensemble', text: "select set_config('bowline.ensemble', $1, false)", values: [ensemble] });
      client.ensemble = ensemble;
      return client;
    } catch (reason) {
      client.release(reason as Error);
      throw reason;
    }
  }

  const query = (...asked: [pg.QueryConfig, unknown[]?]): Promise<pg.QueryResult> => onOne(scoped, (client) => client.query(...asked));

  // Prisma looks whether it was given a pool; what it listens for is the pool's own business.
  const scoped: pg.Pool = Object.assign(Object.create(pool) as pg.Pool, { connect, query, on: () => pool, removeListener: () => pool });
  return scoped;
}
