import type { Socket } from 'node:net';
import type pg from 'pg';

const BEGIN = { name: 'begin', text: 'begin' };
const COMMIT = { name: 'commit', text: 'commit' };

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

/** One transaction whose statements are all known beforehand: sent at once, so that nobody waits between them while rows are locked. When one fails, none has happened. */
export function together(pool: pg.Pool, statements: readonly pg.QueryConfig[]): Promise<pg.QueryResult[]> {
  return onOne(pool, async (client) => {
    const { stream } = (client as unknown as { connection: { stream: Socket } }).connection;
    // One write for all of them: `pg` alone writes each by itself.
    stream.cork();
    const sent = [BEGIN, ...statements, COMMIT].map((statement) => client.query(statement));
    stream.uncork();
    // All of them are heard out before the connection goes back.
    const failed = (await Promise.allSettled(sent)).find(({ status }) => status === 'rejected');
    if (failed) throw (failed as PromiseRejectedResult).reason;
    return (await Promise.all(sent)).slice(1, -1);
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
