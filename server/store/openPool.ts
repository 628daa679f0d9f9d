import pg from 'pg';

export function openPool(connection: pg.PoolConfig, max: number): pg.Pool {
  const pool = new pg.Pool({ ...connection, max, connectionTimeoutMillis: 5000, statement_timeout: 15_000, idle_in_transaction_session_timeout: 15_000, pipeline: true });
  // A connection that breaks while idle is replaced by the next one asked for.
  pool.on('error', () => {});
  pool.on('connect', (client) => {
    // One that breaks in somebody's hands between two statements says so to nobody, and an 'error' that nobody hears ends the process; the next statement fails.
    client.on('error', () => {});
    // The hot statements cost less to run than to plan anew each time.
    client.query('set plan_cache_mode = force_generic_plan').catch(() => {});
  });
  return pool;
}
