import type pg from 'pg';
import { hold, SEATED, seatedBy } from './ground.ts';
import type { KeptGround } from './keptGrounds.ts';
import { isElsewhere, lock, PLACE, type PlaceRow } from './lockedPlace.ts';
import { entryColumns, keepSnapshotOf, ENTRY_COLUMNS } from './logRows.ts';
import { MOVED, type Asker, type Place, type Ruling } from './partLog.ts';
import { together } from './transaction.ts';

/**
 * Writes what was ruled on a kept ground, if that ground still holds once the part's row is locked: everything is sent at once, and the
 * statement that writes looks first. `elsewise`: it does not hold, or one of the operations was answered before; nothing was written.
 */
export async function commitAsGuessed(pool: pg.Pool, part: string, expected: Place, askers: Asker[], kept: KeptGround, ruling: Ruling): Promise<'written' | 'elsewise' | typeof MOVED | null> {
  const statements = [lock(part), append(part, expected, askers, kept, ruling), ...(ruling.snapshot ? [keepSnapshotOf(part, ruling.snapshot, ruling.entries.at(-1)!.operation)] : [])];
  // The section and the sign-ins are held before they are read, as `readGround` does it.
  const [locked, , written] = await together(pool, statements.toSpliced(1, 0, hold(kept.place, askers)));
  const place = (locked as pg.QueryResult<PlaceRow>).rows[0];
  if (!place) return null;
  if (isElsewhere(place, expected)) return MOVED;
  return written!.rowCount ? 'written' : 'elsewise';
}

/** $1 to $6 are SEATED's own. */
const APPEND = `with seated as (${SEATED}),
  fits as (select p.id from (${PLACE}) p
    where p.id = $7 and p.head = $8 and p.revision = $9 and p.rewritten = $24 and p.section is not distinct from $4 and p.programme = $5 and p.over = $6
      and (select seats from seated limit 1) is not distinct from $10::text[]
      and (select array_agg(told order by key collate "C") from seated) is not distinct from $11::text[]
      and not exists (select from unnest($17::text[]) as asked(id)
        where (select true from operation where operation = asked.id) or (select true from refused_operation where operation = asked.id))),
  moved as (update part set head = $12, stage = $13, locked = $14, open = $15 from fits where part.id = fits.id returning part.id)
  insert into operation (part_id, ${ENTRY_COLUMNS})
  select moved.id, row.* from moved, unnest($16::int[], $17::text[], $18::text[], $19::json[], $20::json[], $21::text[], $22::text[], $23::timestamptz[]) as row`;

function append(part: string, { head, revision, rewritten = 0 }: Place, askers: Asker[], { place, seats, told }: KeptGround, { entries, shelf }: Ruling): pg.QueryConfig {
  const actors = [...told].sort(([a], [b]) => (a < b ? -1 : 1)).map(([, one]) => one);
  return { name: 'append-as-guessed', text: APPEND, values: [...seatedBy(place, askers), part, head, revision, seats, actors, entries.at(-1)!.seq, shelf.stage, shelf.locked, shelf.open, ...entryColumns(entries), rewritten] };
}
