import type pg from 'pg';
import type { AgreementState } from '../../core/agreement/state.ts';
import { entryOf, type EntryRow } from './entryRow.ts';
import { readGround } from './ground.ts';
import { commitAsGuessed } from './guessedCommit.ts';
import { keptGrounds } from './keptGrounds.ts';
import { isElsewhere, lockPlace } from './lockedPlace.ts';
import { write } from './logRows.ts';
import { MOVED, type OwnRow, type PartLog, type Place } from './partLog.ts';
import { transaction } from './transaction.ts';

/** The hot path: raw statements, one transaction a batch, ordered by the lock on the part's row. */
export function createPostgresLog(pool: pg.Pool): PartLog {
  const grounds = keptGrounds();
  return {
    async commit(part, expected, askers, operations, decide) {
      const kept = operations.length ? grounds.of(part, askers) : null;
      const guess = kept && decide({ ...kept.ground, known: new Map() });
      // What is refused, or was answered before, is ruled on by what is read under the lock.
      if (guess && guess.entries.length === operations.length) {
        const came = await commitAsGuessed(pool, part, expected, askers, kept, guess);
        if (came === 'written') return guess;
        if (came === 'gone') return null;
        if (came === 'moved') return MOVED;
      }
      return transaction(pool, async (client) => {
        const place = await lockPlace(client, part);
        if (!place) return null;
        if (isElsewhere(place, expected)) return MOVED;
        const read = await readGround(client, place, askers, operations);
        grounds.keep(part, place, read);
        const ruling = decide(read.ground);
        await Promise.all(write(client, part, ruling));
        return ruling;
      });
    },

    async entries(part, after, limit) {
      const { rows } = await pool.query<EntryRow & { head: number }>({ name: 'entries', text: ENTRIES, values: [part, after, limit] });
      if (!rows[0]) return null;
      return { head: rows[0].head, entries: rows.filter((row) => row.seq !== null).map(entryOf) };
    },

    async rowsBy(person) {
      const { rows } = await pool.query<Omit<OwnRow, 'at'> & { at: Date }>('select o.operation, o.name, o.input, o.at, w.title as work, p.name as part from operation o join part p on p.id = o.part_id join work w on w.id = p.work_id where o.person_id = $1 order by o.at, o.part_id, o.seq', [person]);
      return rows.map((row) => ({ ...row, at: row.at.toISOString() }));
    },

    async heads(parts) {
      const { rows } = await pool.query<{ id: string; head: number }>({ name: 'heads', text: 'select id, head from part where id = any($1)', values: [parts] });
      return new Map(rows.map((row) => [row.id, row.head]));
    },

    async place(part) {
      const { rows } = await pool.query<Place>({ name: 'place', text: 'select head, revision, rewritten from part where id = $1', values: [part] });
      return rows[0] ?? null;
    },

    async snapshot(part, protocol) {
      const { rows } = await pool.query<{ state: AgreementState }>('select state from snapshot where part_id = $1 and protocol = $2 order by seq desc limit 1', [part, protocol]);
      return rows[0]?.state ?? null;
    },
  };
}

/** One statement, so that head and rows cannot be of two moments. */
const ENTRIES = `select p.head, o.seq, o.operation, o.name, o.input, o.events, o.person_id as by, o.by_name as "byName", o.at
  from part p left join lateral (select * from operation where part_id = p.id and seq > $2 and seq <= p.head order by seq limit $3) o on true
  where p.id = $1 order by o.seq`;
