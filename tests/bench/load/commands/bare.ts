import { randomUUID } from 'node:crypto';
import pg from 'pg';
import type { Entrance } from '../installation.ts';

/** One statement: the next numbers are taken and the rows added, once an id. */
export const BARE = `with place as (update part set head = head + $2 where id = $1 returning head - $2 as before)
  insert into operation (part_id, seq, operation, name, input, events, person_id, by_name, at)
  select $1, place.before + row.nth, row.operation, row.name, row.input, row.events, row.person, row.by_name, now()
  from place, unnest($3::text[], $4::text[], $5::json[], $6::json[], $7::text[], $8::text[]) with ordinality as row(operation, name, input, events, person, by_name, nth)
  on conflict do nothing returning seq`;

export interface BareRow {
  name: string;
  input: string;
  events: string;
  person: string;
  byName: string;
}

/** The bare statement through `pg`, batched as the server batches: what arrives for a part during a commit goes into the next one together. */
export function bareLog(entrance: Entrance, ensemble: string): { add(part: string, row: BareRow): Promise<void>; close(): Promise<void> } {
  const pool = new pg.Pool({ ...entrance, max: 16, options: `-c bowline.ensemble=${ensemble}` });
  pool.on('error', () => {});
  const waiting = new Map<string, { row: BareRow; done: () => void; failed: (reason: unknown) => void }[]>();
  const busy = new Set<string>();

  async function work(part: string): Promise<void> {
    busy.add(part);
    for (let batch = waiting.get(part)!; batch.length; batch = waiting.get(part)!) {
      waiting.set(part, []);
      const rows = batch.map(({ row }) => row);
      const values = [part, rows.length, rows.map(() => randomUUID()), rows.map(({ name }) => name), rows.map(({ input }) => input), rows.map(({ events }) => events), rows.map(({ person }) => person), rows.map(({ byName }) => byName)];
      try {
        await pool.query({ name: 'bare', text: BARE, values });
        batch.forEach(({ done }) => done());
      } catch (reason) {
        batch.forEach(({ failed }) => failed(reason));
      }
    }
    busy.delete(part);
  }

  return {
    add: (part, row) =>
      new Promise((done, failed) => {
        waiting.set(part, [...(waiting.get(part) ?? []), { row, done, failed }]);
        if (!busy.has(part)) void work(part);
      }),
    close: () => pool.end(),
  };
}
