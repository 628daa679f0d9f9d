import type pg from 'pg';
import { onOne } from './transaction.ts';

const TAKE = "select pg_try_advisory_lock(hashtextextended('bowline ' || $1, 0)) as mine";
const GIVE_BACK = "select pg_advisory_unlock(hashtextextended('bowline ' || $1, 0))";

/** By a lock of PostgreSQL that ends with the connection, so that a killed server holds nobody up. */
export function alone(pool: pg.Pool, what: string, work: () => Promise<void>): Promise<boolean> {
  return onOne(pool, async (client, note) => {
    const { rows } = await client.query<{ mine: boolean }>(TAKE, [what]);
    if (!rows[0]!.mine) return false;
    try {
      await work();
      return true;
    } finally {
      // A connection that still held it would keep it for good: it is not used again.
      await client.query(GIVE_BACK, [what]).catch(note);
    }
  });
}
