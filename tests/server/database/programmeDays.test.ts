import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { PGlite } from '@electric-sql/pglite';
import { describe, expect, it } from 'vitest';
import { MIGRATIONS } from '../../../prisma/difference.ts';

const sql = (name: string) => readFileSync(join(MIGRATIONS, name, 'migration.sql'), 'utf8');

describe('programmes from before they had days', () => {
  it('keep their first rehearsal and their concert', async () => {
    const names = readdirSync(MIGRATIONS).filter((name) => /^\d/.test(name)).sort();
    const at = names.findIndex((name) => name.endsWith('_programme_days_and_seating'));
    const database = new PGlite();
    for (const name of names.slice(0, at)) await database.exec(sql(name));
    await database.exec(`insert into programme (id, title, first_rehearsal, concert) values ('a', 'Both', '2027-03-01', '2027-03-05'), ('b', 'Late', null, '2027-04-05'), ('c', 'None', null, null)`);
    await database.exec(sql(names[at]!));
    const { rows } = await database.query('select id, days from programme order by id');
    const day = (kind: string, date: string) => ({ kind, date, time: null, words: '' });
    expect(rows).toEqual([{ id: 'a', days: [day('rehearsal', '2027-03-01'), day('concert', '2027-03-05')] }, { id: 'b', days: [day('concert', '2027-04-05')] }, { id: 'c', days: [] }]);
    await database.close();
  });
});
