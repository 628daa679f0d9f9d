import type pg from 'pg';
import type { Kind, Thing, Whereabouts } from './whereabouts.ts';

const FIND: Record<Kind, string> = {
  part: 'select w.programme_id as programme from part p join work w on w.id = p.work_id where p.id = $1',
  work: 'select programme_id as programme from work where id = $1',
  programme: 'select id as programme from programme where id = $1',
  section: 'select null as programme from section where id = $1',
  set: 'select null as programme from kept_set where id = $1',
  erratum: 'select w.programme_id as programme from erratum e join work w on w.id = e.work_id where e.id = $1',
  import: "select null as programme from job where id = $1 and kind = 'import'",
};

export const findIn =
  (pool: pg.Pool) =>
  async ({ kind, id }: Thing): Promise<Whereabouts | null> =>
    (await pool.query<Whereabouts>({ name: `find ${kind}`, text: FIND[kind], values: [id] })).rows[0] ?? null;
