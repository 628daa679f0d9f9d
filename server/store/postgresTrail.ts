import type pg from 'pg';
import type { TrailFacts, TrailKind, TrailRow } from '../../core/agreement/wire/trail.ts';
import { tell } from './tell.ts';
import type { Trail, TrailAsking } from './trail.ts';

interface Row {
  id: string;
  at: Date;
  kind: TrailKind;
  by_id: string | null;
  by_name: string | null;
  about_id: string | null;
  about_name: string | null;
  section_id: string | null;
  part_id: string | null;
  facts: TrailFacts;
}

const named = (id: string | null, name: string | null): TrailRow['by'] => (id === null ? null : { id, name: name ?? '' });

const ROWS = `select id, at, kind, by_id, by_name, about_id, about_name, section_id, part_id, facts from trail
  where ($1::text is null or by_id = $1 or about_id = $1) and ($2::text is null or kind = $2)
  and ($3::text is null or (at, id) < (select t.at, t.id from trail t where t.id = $3))
  and ($4::boolean or section_id = any($5) or about_id = any($6)) order by at desc, id desc limit $7`;

export function createPostgresTrail(pool: pg.Pool): Trail {
  return {
    tell: (news, by) => tell(pool, news, by),
    async rows({ person = null, kind = null, before = null, limit, within }: { [Name in keyof TrailAsking]: TrailAsking[Name] | null } & Pick<TrailAsking, 'limit'>) {
      const { rows } = await pool.query<Row>(ROWS, [person, kind, before, within === null, within?.sections ?? [], within?.people ?? [], limit]);
      return rows.map((row) => ({ id: row.id, at: row.at.toISOString(), kind: row.kind, by: named(row.by_id, row.by_name), about: named(row.about_id, row.about_name), section: row.section_id, part: row.part_id, facts: row.facts }));
    },
  };
}
