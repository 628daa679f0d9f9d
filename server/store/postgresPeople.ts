import { randomUUID } from 'node:crypto';
import type pg from 'pg';
import type { Gone, NotChanged, People, Person } from './people.ts';
import type { PrismaClient } from './prisma-client/client.ts';
import { newsOfStanding, standingWord } from './standingNews.ts';
import { tell } from './tell.ts';
import { transaction } from './transaction.ts';

const WHO = 'select p.id, p.name, b.librarian, b.deputy from belonging b join person p on p.id = b.person_id';

const SECTIONS = 'select id from section order by id for update';
const BELONGS = "insert into belonging (ensemble_id, person_id, librarian, deputy) values (current_setting('bowline.ensemble'), $1, $2, $3)";

/**
 * Somebody whose standing is about to change. The sections are held first, in the order in which the database tells them of it; then everybody who does the
 * librarian's work, so that two who go at once do not leave nobody.
 */
async function held(client: pg.PoolClient, id: string, librarian: boolean): Promise<Person | NotChanged> {
  await client.query(SECTIONS);
  const { rows: librarians } = await client.query<{ id: string }>('select person_id as id from belonging where librarian order by person_id for update');
  const { rows } = await client.query<Person>(`${WHO} where p.id = $1 for update of b`, [id]);
  if (!rows[0]) return 'notHere';
  return !librarian && rows[0].librarian && librarians.length === 1 ? 'lastLibrarian' : rows[0];
}

export function createPostgresPeople(prisma: PrismaClient, pool: pg.Pool): People {
  return {
    byId: async (id) => (await pool.query<Person>(`${WHO} where p.id = $1`, [id])).rows[0] ?? null,
    all: async () => (await pool.query<Person>(`${WHO} order by b.since, p.id`)).rows,

    add: (name, librarian, wanted = false, by = null) =>
      transaction(pool, async (client) => {
        const [id, deputy] = [randomUUID(), wanted && !librarian];
        // Nothing is asked back: who belongs nowhere yet is seen by nobody.
        await client.query('insert into person (id, name) values ($1, $2)', [id, name]);
        await client.query(BELONGS, [id, librarian, deputy]);
        await tell(client, { kind: 'personAdded', about: { id, name }, facts: { as: standingWord({ librarian, deputy }) } }, by);
        return { id, name, librarian, deputy };
      }),

    stand: (id, { librarian, deputy }, by = null) =>
      transaction(pool, async (client) => {
        const before = await held(client, id, librarian);
        if (typeof before === 'string') return before;
        const person = { ...before, librarian, deputy: deputy && !librarian };
        await client.query('update belonging set librarian = $2, deputy = $3 where person_id = $1', [id, person.librarian, person.deputy]);
        if (person.deputy) await client.query('delete from membership where person_id = $1', [id]);
        for (const news of newsOfStanding(before, person)) await tell(client, { ...news, about: person }, by);
        return person;
      }),

    leave: (id, by = null) =>
      transaction(pool, async (client) => {
        const person = await held(client, id, false);
        if (typeof person === 'string') return person;
        // Seats go with the belonging.
        await client.query('delete from belonging where person_id = $1', [id]);
        await client.query("insert into departure (ensemble_id, person_id) values (current_setting('bowline.ensemble'), $1)", [id]);
        await tell(client, { kind: 'personLeft', about: person }, by);
        return null;
      }),

    gone: async () => (await pool.query<Gone>('select p.id, p.name, d.left_at as "leftAt" from departure d join person p on p.id = d.person_id order by d.left_at desc, p.id')).rows,

    comeBack: (id, { librarian, deputy }, by = null) =>
      transaction(pool, async (client) => {
        const { rows } = await client.query<{ id: string; name: string }>('select p.id, p.name from departure d join person p on p.id = d.person_id where d.person_id = $1 for update of d', [id]);
        if (!rows[0]) return null;
        const person = { ...rows[0], librarian, deputy: deputy && !librarian };
        await client.query('delete from departure where person_id = $1', [id]);
        await client.query(BELONGS, [id, person.librarian, person.deputy]);
        await tell(client, { kind: 'personBack', about: person, facts: { as: standingWord(person) } }, by);
        return person;
      }),

    async memberships(personId) {
      const rows = await prisma.membership.findMany({ where: { personId }, include: { section: { select: { name: true } } }, orderBy: { section: { position: 'asc' } } });
      return rows.map((row) => ({ section: row.sectionId, sectionName: row.section.name, role: row.principal ? 'principal' : 'player', seat: row.seat }));
    },

    async seatedIn(personId, day) {
      const rows = await prisma.programmeMember.findMany({ where: { personId, seating: { programme: { OR: [{ ends: null }, { ends: { gte: new Date(day) } }] } } }, select: { programmeId: true }, distinct: ['programmeId'] });
      return rows.map(({ programmeId }) => programmeId);
    },
  };
}
