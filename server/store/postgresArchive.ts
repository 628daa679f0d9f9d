import type pg from 'pg';
import { musicPrints } from '../../core/archive/alike.ts';
import { keptMarks, type KeptPart, type KeptSet, type KeptSetView } from '../../core/archive/keptSet.ts';
import type { Archive } from './archive.ts';
import { tell } from './tell.ts';
import { transaction } from './transaction.ts';

const HEADING = 'id, title, composer, ensemble, conductor, season, file_name as "fileName", kept_by as "keptBy", kept_at as "keptAt"';
const SET = 'insert into kept_set (id, title, composer, ensemble, conductor, season, bytes, file_name, kept_by, kept_at) values ($1, $2, $3, $4, $5, $6, $7, $8, $9, $10) on conflict do nothing';
const PART = 'insert into kept_part (set_id, position, name, section, seats, content, log, marks, prints) values ($1, $2, $3, $4, $5, $6, $7, $8, $9)';

type HeadingRow = Omit<KeptSetView, 'parts' | 'keptAt'> & { keptAt: Date };

async function insert(client: pg.PoolClient, set: KeptSet): Promise<boolean> {
  const bytes = Buffer.from(set.bytes.buffer, set.bytes.byteOffset, set.bytes.byteLength);
  const { rowCount } = await client.query(SET, [set.id, set.title, set.composer, set.ensemble, set.conductor, set.season, bytes, set.fileName, set.keptBy, set.keptAt]);
  if (!rowCount) return false;
  for (const [position, part] of set.parts.entries()) {
    await client.query(PART, [set.id, position, part.content.name, part.section, part.seats, JSON.stringify(part.content), JSON.stringify(part.log), keptMarks(part).length, musicPrints(part.content)]);
  }
  return true;
}

export function createPostgresArchive(pool: pg.Pool): Archive {
  return {
    keep: (sets, by = null, how = 'setKept') =>
      transaction(pool, async (client) => {
        const added: string[] = [];
        for (const set of sets) {
          if (!(await insert(client, set))) continue;
          added.push(set.id);
          await tell(client, { kind: how, facts: { work: set.title, season: set.season } }, by);
        }
        return added;
      }),

    async sets() {
      const [{ rows: sets }, { rows: parts }] = await Promise.all([
        pool.query<HeadingRow>(`select ${HEADING} from kept_set order by kept_at desc, id`),
        pool.query<{ set: string; name: string; section: string | null; marks: number }>('select set_id as set, name, section, marks from kept_part order by set_id, position'),
      ]);
      return sets.map((set) => ({ ...set, keptAt: set.keptAt.toISOString(), parts: parts.filter((part) => part.set === set.id).map(({ name, section, marks }) => ({ name, section, marks })) }));
    },

    async set(id) {
      const { rows } = await pool.query<HeadingRow & { bytes: Buffer }>(`select ${HEADING}, bytes from kept_set where id = $1`, [id]);
      if (!rows[0]) return null;
      const { rows: parts } = await pool.query<KeptPart>('select content, section, seats, log from kept_part where set_id = $1 order by position', [id]);
      return { ...rows[0], bytes: new Uint8Array(rows[0].bytes), keptAt: rows[0].keptAt.toISOString(), parts };
    },

    async prints() {
      const { rows } = await pool.query<{ set: string; prints: string[] }>('select set_id as set, prints from kept_part order by set_id, position');
      const found = new Map<string, string[][]>();
      for (const { set, prints } of rows) found.set(set, [...(found.get(set) ?? []), prints]);
      return found;
    },
  };
}
