import type pg from 'pg';
import type { Attempts } from './attempts.ts';

/** The row itself counts, so that of many processes that count at once none is lost. */
const COUNT = `insert into attempt (key, count, until) values ($1, 1, $3)
  on conflict (key) do update set count = case when attempt.until <= $2 then 1 else attempt.count + 1 end, until = case when attempt.until <= $2 then $3 else attempt.until end
  returning count`;

export function createPostgresAttempts(pool: pg.Pool): Attempts {
  return {
    async count(key, seconds, now) {
      await pool.query('delete from attempt where until <= $1 and key <> $2', [now, key]);
      const { rows } = await pool.query<{ count: number }>(COUNT, [key, now, new Date(now.getTime() + seconds * 1000)]);
      return rows[0]!.count;
    },
    async forget(key) {
      await pool.query('delete from attempt where key = $1', [key]);
    },
  };
}
