import PgBoss from 'pg-boss';
import type pg from 'pg';
import { KINDS, ofEachKind, type Place, type Queue } from '../queue/queue.ts';
import { transaction } from './transaction.ts';
import { openWatch, type Watch } from './watch.ts';

const SCHEMA = 'bowline_queue';
const GIVEN_UP = 'given-up';
/** Between taking a job and saying so to the others a process may stand still for so long. Chosen, not measured. */
const STILL = '2 seconds';
const STILL_AT_IT = 10;

/** As a line keeps a place: its ensemble is what turns are taken by. */
type Kept = Pick<Place, 'ensemble' | 'job' | 'kind'>;
type Runner = Pick<pg.ClientBase, 'query'>;

/** The line in PostgreSQL. What is put in line within somebody's transaction is there when that is committed. */
export interface PostgresQueue extends Queue {
  put(place: Place, within?: Runner): Promise<void>;
  drop(place: Place, within?: Runner): Promise<void>;
}

// A turn is a number that rises: who comes first takes the turn at which the line is now, whoever has jobs in line already the one after their last.
const TURN = `select coalesce(greatest(min(-priority), max(-priority) filter (where data->>'ensemble' = $2) + 1), 0)::int as turn
  from ${SCHEMA}.job where name = $1 and state < 'completed'`;
const AHEAD = `select count(*)::int as ahead from ${SCHEMA}.job other join ${SCHEMA}.job mine on mine.name = $1 and mine.id = $2 and mine.state < 'active'
  where other.name = $1 and other.state < 'active' and (other.priority > mine.priority or other.priority = mine.priority and (other.created_on, other.id) < (mine.created_on, mine.id))`;
const WAITING = `select name, count(*)::int as waiting from ${SCHEMA}.job where state < 'active' group by name`;
const key = (id: string): string => `hashtextextended(${id}::text, 0)`;
// Whoever works at a job holds its lock as long as they live; a lock that can be had is of a job that nobody works at.
const LEFT = `with active as materialized (select name, id from ${SCHEMA}.job where state = 'active' and started_on < now() - interval '${STILL}' for update skip locked)
  select name, id from active where pg_try_advisory_xact_lock(${key('id')})`;

/** pg-boss without its timers, its own connections and the right to make tables: a worker calls what is to be called. */
function openBoss(pool: pg.Pool): PgBoss {
  const boss = new PgBoss({ db: runs(pool), schema: SCHEMA, migrate: false, supervise: false, schedule: false });
  boss.on('error', () => {});
  return boss;
}

const runs = (on: Runner): PgBoss.Db => ({ executeSql: async (text, values) => on.query(text, values) });

export function openPostgresQueue(pool: pg.Pool, connection: pg.ClientConfig): PostgresQueue {
  const boss = openBoss(pool);
  const watch: Watch = openWatch(connection, pool);
  /** In line by this id: that of the job, but for those given up, which stand in their line under another. */
  const held = new Map<string, { name: string; id: string }>();

  async function takeFrom(name: string): Promise<Place | null> {
    const [next] = await boss.fetch<Kept>(name);
    if (!next) return null;
    const place: Place = { job: next.data.job, kind: next.data.kind, ensemble: next.data.ensemble };
    if (!(await watch.lock(next.id, place.job))) {
      // Somebody who was thought gone is at it still: it is looked at again in a while.
      await putBack(place, { name, id: next.id }, STILL_AT_IT);
      return null;
    }
    held.set(place.job, { name, id: next.id });
    return place;
  }

  /** Out of these hands whatever happens: where the line cannot be told, others find the lock free and take the job up again. */
  async function letGo({ job }: Place, tell: (own: { name: string; id: string }) => Promise<unknown>): Promise<void> {
    const own = held.get(job);
    if (!own) return;
    held.delete(job);
    try {
      await tell(own);
    } finally {
      await watch.unlock(own.id).catch(() => {});
    }
  }

  async function putBack(place: Place, { name, id }: { name: string; id: string }, seconds = 0): Promise<void> {
    await transaction(pool, async (client) => {
      const row = await boss.getJobById<Kept>(name, id, { db: runs(client), includeArchive: false });
      if (row?.state !== 'active') return;
      await boss.deleteJob(name, id, { db: runs(client) });
      await boss.send(name, row.data, { id, priority: row.priority, startAfter: seconds, db: runs(client) });
    });
    watch.tell({ what: 'asked', kind: place.kind });
  }

  return {
    async put({ job, kind, ensemble }, within = pool) {
      const { rows } = await within.query<{ turn: number }>(TURN, [kind, ensemble]);
      await boss.send(kind, { job, kind, ensemble }, { id: job, priority: -rows[0]!.turn, db: runs(within) });
    },

    take: (kind) => takeFrom(kind),
    takeGivenUp: () => takeFrom(GIVEN_UP),

    end: (place) => letGo(place, ({ name, id }) => boss.complete(name, id)),

    async giveBack(place, how) {
      await letGo(place, async (own) => {
        if (how === 'tried') await boss.fail(own.name, own.id, { message: 'given back' });
        else if (how === 'untried') await putBack(place, own);
      });
      watch.tell({ what: 'asked', kind: place.kind });
    },

    async drop({ job, kind }, within = pool) {
      await within.query(`delete from ${SCHEMA}.job where name = $1 and id = $2 and state < 'active'`, [kind, job]);
    },

    async ahead({ job, kind }) {
      return (await pool.query<{ ahead: number }>(AHEAD, [kind, job])).rows[0]!.ahead;
    },

    async waiting() {
      const { rows } = await pool.query<{ name: string; waiting: number }>(WAITING);
      return ofEachKind((kind) => rows.find(({ name }) => name === kind)?.waiting ?? 0);
    },

    async takeBack() {
      const left = await transaction(pool, async (client) => {
        const { rows } = await client.query<{ name: string; id: string }>(LEFT);
        for (const { name, id } of rows) await boss.fail(name, id, { message: 'its worker is gone' }, { db: runs(client) });
        return rows.length;
      });
      if (left) for (const kind of KINDS) watch.tell({ what: 'asked', kind });
    },

    tidy: () => boss.maintain(),
    tell: (news) => watch.tell(news),
    listen: (listener) => watch.listen(listener),
    close: () => watch.close(),
  };
}
