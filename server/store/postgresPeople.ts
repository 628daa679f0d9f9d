import { randomUUID } from 'node:crypto';
import type pg from 'pg';
import type { People, Person } from './people.ts';
import type { PrismaClient } from './prisma-client/client.ts';
import { transaction } from './transaction.ts';

const WHO = 'select p.id, p.name, b.librarian, b.deputy from belonging b join person p on p.id = b.person_id';

export function createPostgresPeople(prisma: PrismaClient, pool: pg.Pool): People {
  return {
    byId: async (id) => (await pool.query<Person>(`${WHO} where p.id = $1`, [id])).rows[0] ?? null,
    all: async () => (await pool.query<Person>(`${WHO} order by b.since, p.id`)).rows,

    add: (name, librarian, deputy = false) =>
      transaction(pool, async (client) => {
        const id = randomUUID();
        // Nothing is asked back: who belongs nowhere yet is seen by nobody.
        await client.query('insert into person (id, name) values ($1, $2)', [id, name]);
        await client.query("insert into belonging (ensemble_id, person_id, librarian, deputy) values (current_setting('bowline.ensemble'), $1, $2, $3)", [id, librarian, deputy]);
        return { id, name, librarian, deputy };
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
