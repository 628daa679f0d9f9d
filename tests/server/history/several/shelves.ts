import pg from 'pg';
import type { LogEntry } from '../../../../core/agreement/event.ts';
import { BOOTSTRAP, DATABASE } from '../../../../server/database/connection.ts';
import type { Cluster } from '../../../../server/database/cluster.ts';
import { print, type Note } from '../record/record.ts';

/** The database read as its owner of all, past every policy: what really stands there. */
export interface Shelves {
  heads(): Promise<Map<string, number>>;
  worksIn(programme: string): Promise<number>;
  /** Notes logs, remembered refusals and snapshots of these parts. */
  write(parts: string[], note: Note): Promise<void>;
}

interface Row extends Omit<LogEntry, 'at'> {
  ensemble: string;
  at: Date;
}

const ROWS = `select ensemble_id as ensemble, seq, operation, name, input, events, person_id as by, by_name as "byName", at from operation where part_id = $1 order by seq`;

export function readShelves(cluster: Cluster): Shelves {
  async function ask<T extends pg.QueryResultRow>(text: string, values: unknown[] = []): Promise<T[]> {
    for (;;) {
      const client = new pg.Client({ ...cluster.connection(BOOTSTRAP, DATABASE), connectionTimeoutMillis: 5000 });
      client.on('error', () => {});
      try {
        await client.connect();
        return (await client.query<T>(text, values)).rows;
      } catch {
        // It was killed just now and comes back by itself.
        await new Promise((resolve) => setTimeout(resolve, 200));
      } finally {
        await client.end().catch(() => {});
      }
    }
  }

  return {
    heads: async () => new Map((await ask<{ id: string; head: number }>('select id, head from part')).map(({ id, head }) => [id, head])),
    worksIn: async (programme) => (await ask('select 1 from work where programme_id = $1', [programme])).length,
    async write(parts, note) {
      for (const part of parts) {
        const rows = await ask<Row>(ROWS, [part]);
        note({ k: 'log', part, rows: rows.map((row) => ({ ...row, at: row.at.toISOString() })) });
        const refused = await ask<{ op: string; code: string }>("select operation as op, refusal->>'code' as code from refused_operation where part_id = $1", [part]);
        note({ k: 'turnedDown', part, ops: refused });
        for (const { seq, state } of await ask<{ seq: number; state: unknown }>('select seq, state from snapshot where part_id = $1', [part])) note({ k: 'snapshot', part, seq, state: print(state) });
      }
    },
  };
}
