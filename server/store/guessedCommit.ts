import type pg from 'pg';
import { PROTOCOL } from '../../core/agreement/wire/socket.ts';
import { sessionsOf } from './ground.ts';
import type { KeptGround } from './keptGrounds.ts';
import { entryColumns } from './logRows.ts';
import type { Asker, Place, Ruling } from './partLog.ts';

/** By these the function breaks off: the ground is another, or a row of that id is in a log already (PostgreSQL's unique_violation). */
const ELSEWISE: ReadonlySet<unknown> = new Set(['BL001', '23505']);
/** In the order of the function's own list. */
const WRITE = `select write_as_guessed(${Array.from({ length: 23 }, (_, nth) => `$${nth + 1}`).join(', ')}) as came`;

/**
 * Writes what was ruled on a kept ground, if that ground still holds once the part's row is locked: one call, which looks before it writes. `elsewise`: it does not
 * hold, or one of the operations was answered before; `moved`: the part is not where `expected` says; `gone`: there is no such part. Then nothing was written.
 */
export async function commitAsGuessed(pool: pg.Pool, part: string, expected: Place, askers: Asker[], kept: KeptGround, ruling: Ruling): Promise<'written' | 'elsewise' | 'moved' | 'gone'> {
  try {
    const { rows } = await pool.query<{ came: 'written' | 'moved' | 'gone' }>({ name: 'write-as-guessed', text: WRITE, values: valuesOf(part, expected, askers, kept, ruling) });
    return rows[0]!.came;
  } catch (reason) {
    if (ELSEWISE.has((reason as { code?: unknown }).code)) return 'elsewise';
    throw reason;
  }
}

function valuesOf(part: string, { head, revision, rewritten = 0 }: Place, askers: Asker[], { place, told }: KeptGround, { entries, shelf, snapshot }: Ruling): unknown[] {
  const seen = [part, head, revision, rewritten, place.section, place.ends, place.over, told, sessionsOf(askers)];
  return [...seen, entries.at(-1)!.seq, shelf.stage, shelf.locked, shelf.open, ...entryColumns(entries), snapshot && JSON.stringify(snapshot), PROTOCOL];
}
