import { randomUUID } from 'node:crypto';
import type pg from 'pg';
import { createJobFiles } from './jobFiles.ts';
import { type Ending, type Job, type Jobs, KEPT_HOURS, STRAY_HOURS, TurnLost } from './jobs.ts';
import type { PostgresQueue } from './postgresQueue.ts';
import { transaction } from './transaction.ts';

const SHOWN = `select id, kind, target, "order", progress, askers, state, stopped, outcome, at,
  coalesce((select json_agg(json_build_object('id', f.id, 'fileName', f.name) order by f.place) from job_file f where f.job_id = job.id and not f.made), '[]') as uploads from job`;
const UNDER_WAY = "state in ('waiting', 'running')";
const END = `update job set state = $3, progress = $4, outcome = $5, alone = null, ended_at = now() where id = $1 and turn = $2 and state = 'running'`;

/** Ends a job within the transaction of its effect, or throws what undoes that. */
export async function endWithin<Result>(client: pg.ClientBase, { job, turn, progress, outcome }: Ending<Result>, result: Result): Promise<void> {
  const { rowCount } = await client.query(`${END} and not stopped`, [job, turn, 'done', JSON.stringify(progress()), JSON.stringify(outcome(result))]);
  if (!rowCount) throw new TurnLost(`Job ${job} is not at this turn any more.`);
}

/** `ensemble`: the one the pool reaches. */
export function createPostgresJobs(pool: pg.Pool, queue: PostgresQueue, ensemble: string): Jobs {
  const shown = async (where: string, values: unknown[]): Promise<Job[]> => (await pool.query<Job>(`${SHOWN} ${where}`, values)).rows;
  const tellOf = (job: string): void => queue.tell({ what: 'job', job });

  /** Under the row's lock: one that waits is out of the line at once, one that is worked at is told to stop. */
  async function stopWithin(client: pg.ClientBase, id: string): Promise<boolean> {
    const sql = `update job set stopped = true, alone = null, state = case when state = 'waiting' then 'stopped' else state end, ended_at = case when state = 'waiting' then now() end
      where id = $1 and ${UNDER_WAY} returning kind`;
    const { rows } = await client.query<Pick<Job, 'kind'>>(sql, [id]);
    if (rows[0]) await queue.drop({ job: id, kind: rows[0].kind, ensemble }, client);
    return rows.length > 0;
  }

  return {
    ...createJobFiles(pool, tellOf),

    async add({ kind, target, order, progress, by, alone, uploads, at }) {
      const id = randomUUID();
      const added = await transaction(pool, async (client) => {
        const sql = `insert into job (id, kind, target, "order", progress, askers, alone, at) values ($1, $2, $3, $4, $5, $6, $7, $8) on conflict (ensemble_id, alone) do nothing`;
        const { rowCount } = await client.query(sql, [id, kind, target, JSON.stringify(order), JSON.stringify(progress), [by], alone, at]);
        if (!rowCount) return false;
        for (const [place, upload] of uploads.entries()) await client.query('update job_file set job_id = $1, place = $2 where id = $3', [id, place, upload.id]);
        await queue.put({ job: id, kind, ensemble }, client);
        return true;
      });
      if (!added) return null;
      queue.tell({ what: 'asked', kind });
      return (await shown('where id = $1', [id]))[0] ?? null;
    },

    job: async (id) => (await shown('where id = $1', [id]))[0] ?? null,
    since: (kind, at) => shown('where kind = $1 and at >= $2 order by came', [kind, at]),
    of: (kind, target) => shown('where kind = $1 and target = $2 order by came desc', [kind, target]),
    ahead: ({ id, kind }) => queue.ahead({ job: id, kind, ensemble }),

    async join(id, person) {
      const sql = `update job set askers = array_append(array_remove(askers, $2), $2) where id = $1 and ${UNDER_WAY} and not stopped`;
      return Boolean((await pool.query(sql, [id, person])).rowCount);
    },

    async leave(id, person) {
      const stopped = await transaction(pool, async (client) => {
        const sql = `update job set askers = array_remove(askers, $2) where id = $1 and $2 = any(askers) and ${UNDER_WAY} returning askers`;
        const { rows } = await client.query<Pick<Job, 'askers'>>(sql, [id, person]);
        return rows[0]?.askers.length === 0 && stopWithin(client, id);
      });
      if (stopped) tellOf(id);
    },

    async stop(id) {
      const stopped = await transaction(pool, (client) => stopWithin(client, id));
      if (stopped) tellOf(id);
      return stopped;
    },

    forget: async (id) => void (await pool.query(`delete from job where id = $1 and not ${UNDER_WAY}`, [id])),

    async begin(id, turn) {
      const sql = `update job set turn = $2, state = case when stopped then 'stopped' else 'running' end, ended_at = case when stopped then now() end, alone = case when stopped then null else alone end
        where id = $1 and ${UNDER_WAY} returning stopped`;
      const { rows } = await pool.query<Pick<Job, 'stopped'>>(sql, [id, turn]);
      return rows[0] && !rows[0].stopped ? ((await shown('where id = $1', [id]))[0] ?? null) : null;
    },

    async report(id, turn, progress) {
      await pool.query("update job set progress = $3 where id = $1 and turn = $2 and state = 'running'", [id, turn, JSON.stringify(progress)]);
    },

    async end({ job, turn, progress, outcome }, state) {
      const { rowCount } = await pool.query(END, [job, turn, state, JSON.stringify(progress()), JSON.stringify(outcome())]);
      tellOf(job);
      return Boolean(rowCount);
    },

    async giveUp(id, outcome) {
      const sql = `update job set state = case when stopped then 'stopped' else 'refused' end, outcome = $2, alone = null, turn = null, ended_at = now() where id = $1 and ${UNDER_WAY}`;
      await pool.query(sql, [id, JSON.stringify(outcome)]);
      tellOf(id);
    },

    async sweep(now) {
      const before = (hours: number): Date => new Date(now.getTime() - hours * 60 * 60 * 1000);
      for (const [kind, hours] of Object.entries(KEPT_HOURS)) await pool.query(`delete from job where kind = $1 and ended_at < $2 and not ${UNDER_WAY}`, [kind, before(hours)]);
      await pool.query('delete from job_file where job_id is null and at < $1', [before(STRAY_HOURS)]);
    },
  };
}
