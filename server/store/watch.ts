import pg from 'pg';
import type { News } from '../queue/queue.ts';

const CHANNEL = 'bowline_jobs';
const KEY = 'hashtextextended($1::text, 0)';
/** Tried again after so long when the database is away. Chosen, not measured. */
const AGAIN_MS = 500;
/** A line cut without a word is noticed by the database's questions, and by ours. Chosen, not measured. */
const ALIVE = { keepAlive: true, keepAliveInitialDelayMillis: 5_000 };

const nothing = (): void => {};

/** One connection that stays: it hears what other processes tell, and holds a lock for every job this process works at, which goes when the process does. */
export interface Watch {
  /** False where another process holds it. */
  lock(id: string, job: string): Promise<boolean>;
  unlock(id: string): Promise<void>;
  tell(news: News): void;
  listen(listener: (news: News) => void): () => void;
  close(): Promise<void>;
}

export function openWatch(connection: pg.ClientConfig, pool: pg.Pool): Watch {
  const listeners = new Set<(news: News) => void>();
  /** Jobs by what they are locked as. */
  const held = new Map<string, string>();
  let closed = false;
  let timer: NodeJS.Timeout | undefined;
  let client = connect();
  let asked: Promise<void> = Promise.resolve();

  const hear = (news: News): void => listeners.forEach((listener) => listener(news));

  async function connect(): Promise<pg.Client> {
    const next = new pg.Client({ ...connection, ...ALIVE });
    next.on('error', () => {});
    next.on('notification', ({ payload }) => hear(JSON.parse(payload!) as News));
    try {
      await next.connect();
      await next.query(`listen ${CHANNEL}`);
      // What was held before a cut is held again, unless somebody took it meanwhile.
      for (const [id, job] of held) if (!(await locked(next, id))) lose(id, job);
    } catch (reason) {
      await next.end().catch(() => {});
      again();
      throw reason;
    }
    next.on('end', again);
    return next;
  }

  function again(): void {
    if (closed) return;
    clearTimeout(timer);
    timer = setTimeout(() => {
      client = connect();
      client.catch(() => {});
    }, AGAIN_MS);
  }

  function lose(id: string, job: string): void {
    held.delete(id);
    hear({ what: 'lost', job });
  }

  async function locked(on: pg.Client, id: string): Promise<boolean> {
    const { rows } = await on.query<{ had: boolean }>(`select pg_try_advisory_lock(${KEY}) as had`, [id]);
    return rows[0]!.had;
  }

  /** One question after another: the connection answers no two at once. */
  function inTurn<T>(question: (on: pg.Client) => Promise<T>): Promise<T> {
    const answer = asked.then(async () => question(await client));
    asked = answer.then(nothing, nothing);
    return answer;
  }

  client.catch(() => {});
  return {
    async lock(id, job) {
      const had = await inTurn((on) => locked(on, id));
      if (had) held.set(id, job);
      return had;
    },
    async unlock(id) {
      if (held.delete(id)) await inTurn((on) => on.query(`select pg_advisory_unlock(${KEY})`, [id]));
    },
    // A hint that is lost is made good by looking now and then.
    tell: (news) => void pool.query('select pg_notify($1, $2)', [CHANNEL, JSON.stringify(news)]).catch(() => {}),
    listen(listener) {
      listeners.add(listener);
      return () => void listeners.delete(listener);
    },
    async close() {
      closed = true;
      clearTimeout(timer);
      await client.then((open) => open.end()).catch(() => {});
    },
  };
}
