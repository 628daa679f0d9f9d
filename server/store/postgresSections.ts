import { randomUUID } from 'node:crypto';
import type { SectionSettings, SectionView } from '../../core/agreement/wire/http.ts';
import type { Prisma, PrismaClient } from './prisma-client/client.ts';
import { membersOf, planFits, type Sections } from './sections.ts';

const WITH_PEOPLE = { memberships: { include: { person: { select: { id: true, name: true } } } } } as const;
type Row = Prisma.SectionGetPayload<{ include: typeof WITH_PEOPLE }>;

export function createPostgresSections(prisma: PrismaClient): Sections {
  return {
    async add(name, instrument) {
      const last = await prisma.section.aggregate({ _max: { position: true } });
      const row = { id: randomUUID(), name, instrument, position: (last._max.position ?? 0) + 1, seats: [] };
      const { count } = await prisma.section.createMany({ data: [row], skipDuplicates: true });
      return count ? { id: row.id, name, instrument, seats: [], principal: null, settings: {} } : null;
    },

    all: async () => (await prisma.section.findMany({ include: WITH_PEOPLE, orderBy: { position: 'asc' } })).map(view),

    async byId(id) {
      const row = await prisma.section.findUnique({ where: { id }, include: WITH_PEOPLE });
      return row && view(row);
    },

    async seat(id, plan) {
      if (!planFits(plan)) return false;
      const seated = membersOf(plan).map(({ person, ...place }) => ({ ...place, personId: person, sectionId: id }));
      return prisma.$transaction(async (tx) => {
        // Held while the plan changes: a batch that commits reads the section under a share lock, so it sees the old plan or the new.
        const locked = await tx.$queryRaw<unknown[]>`select id from section where id = ${id} for update`;
        if (locked.length === 0) return false;
        if ((await tx.person.count({ where: { id: { in: seated.map((member) => member.personId) } } })) < seated.length) return false;
        await tx.membership.deleteMany({ where: { sectionId: id } });
        await tx.membership.createMany({ data: seated });
        await tx.section.update({ where: { id }, data: { seats: plan.seats.map((place) => place.seat) } });
        return true;
      });
    },

    async set(id, settings) {
      const { count } = await prisma.section.updateMany({ where: { id }, data: { settings: settings as Prisma.InputJsonObject } });
      return count > 0;
    },

    parts: async (sectionId) => (await prisma.part.findMany({ where: { sectionId }, select: { id: true } })).map((part) => part.id),
  };
}

function view(row: Row): SectionView {
  const at = new Map(row.memberships.map((member) => [member.seat, member.person]));
  const principal = row.memberships.find((member) => member.principal)?.person ?? null;
  return { id: row.id, name: row.name, instrument: row.instrument, seats: row.seats.map((seat) => ({ seat, person: at.get(seat) ?? null })), principal, settings: row.settings as SectionSettings };
}
