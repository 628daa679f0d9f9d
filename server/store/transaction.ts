import type pg from 'pg';

/** Runs work in one transaction. What broke on the way is thrown; the connection is then given up, not used again. */
export function transaction<T>(pool: pg.Pool, work: (client: pg.PoolClient) => Promise<T>): Promise<T> {
  return onOne(pool, async (client, note) => {
    try {
      await client.query('begin');
      const result = await work(client);
      await client.query('commit');
      return result;
    } catch (reason) {
      await client.query('rollback').catch(note);
      throw reason;
    }
  });
}

/** Work on one connection of the pool; one that broke meanwhile is given up, not used again. */
export async function onOne<T>(pool: pg.Pool, work: (client: pg.PoolClient, note: (reason: Error) => void) => Promise<T>): Promise<T> {
  const client = await pool.connect();
  let broken: Error | undefined;
  const note = (reason: Error) => (broken = reason);
  client.on('error', note);
  try {
    return await work(client, note);
  } finally {
    client.off('error', note);
    client.release(broken);
  }
}
