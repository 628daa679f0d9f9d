import type pg from 'pg';
import { PROTOCOL } from '../../core/agreement/wire/socket.ts';
import { seatedBy } from './ground.ts';
import type { KeptGround } from './keptGrounds.ts';
import { entryColumns } from './logRows.ts';
import type { Asker, Place, Ruling } from './partLog.ts';

/** In the order of the function's own list. */
const WRITE = `select write_as_guessed(${Array.from({ length: 26 }, (_, nth) => `$${nth + 1}`).join(', ')}) as came`;

/**
 * Writes what was ruled on a kept ground, if that ground still holds once the part's row is locked: one call, which looks before it writes. `elsewise`: it does not
 * hold, or one of the operations was answered before; `moved`: the part is not where `expected` says; `gone`: there is no such part. Then nothing was written.
 */
export async function commitAsGuessed(pool: pg.Pool, part: string, expected: Place, askers: Asker[], kept: KeptGround, ruling: Ruling): Promise<'written' | 'elsewise' | 'moved' | 'gone'> {
  const { rows } = await pool.query<{ came: 'written' | 'elsewise' | 'moved' | 'gone' }>({ name: 'write-as-guessed', text: WRITE, values: valuesOf(part, expected, askers, kept, ruling) });
  return rows[0]!.came;
}

function valuesOf(part: string, { head, revision, rewritten = 0 }: Place, askers: Asker[], { place, seats, told }: KeptGround, { entries, shelf, snapshot }: Ruling): unknown[] {
  const actors = [...told].sort(([a], [b]) => (a < b ? -1 : 1)).map(([, one]) => one);
  return [...seatedBy(place, askers), part, head, revision, rewritten, seats, actors, entries.at(-1)!.seq, shelf.stage, shelf.locked, shelf.open, ...entryColumns(entries), snapshot && JSON.stringify(snapshot), PROTOCOL];
}
