import { randomUUID } from 'node:crypto';
import type { SectionSettings, SectionView } from '../../core/agreement/wire/http.ts';
import type { Prisma, PrismaClient } from './prisma-client/client.ts';
import { seatingView } from './seatingRows.ts';
import { membersOf, planFits, type SeatingPlan, type Sections } from './sections.ts';

const WHO = { select: { id: true, name: true } } as const;
const WITH_PEOPLE = { memberships: { include: { person: WHO } } } as const;
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
        if (!(await hold(tx, id)) || !(await known(tx, plan))) return false;
        await tx.membership.deleteMany({ where: { sectionId: id } });
        await tx.membership.createMany({ data: seated });
        await tx.section.update({ where: { id }, data: { seats: plan.seats.map((place) => place.seat) } });
        return true;
      });
    },

    async seatFor(programmeId, sectionId, plan) {
      if (plan && !planFits(plan)) return false;
      return prisma.$transaction(async (tx) => {
        if (!(await hold(tx, sectionId)) || !(await tx.programme.count({ where: { id: programmeId } }))) return false;
        if (plan && !(await known(tx, plan))) return false;
        const where = { programmeId, sectionId };
        await tx.programmeSeating.deleteMany({ where });
        if (!plan) return true;
        await tx.programmeSeating.create({ data: { ...where, seats: plan.seats.map(({ seat }) => seat) } });
        await tx.programmeMember.createMany({ data: membersOf(plan).map(({ person, ...place }) => ({ ...place, ...where, personId: person })) });
        return true;
      });
    },

    async ofPart(id) {
      const part = await prisma.part.findUnique({ where: { id }, select: { section: { include: WITH_PEOPLE }, work: { select: { programmeId: true } } } });
      if (!part?.section) return null;
      const own = await prisma.programmeSeating.findUnique({ where: { programmeId_sectionId: { programmeId: part.work.programmeId, sectionId: part.section.id } }, include: { members: { include: { person: WHO } } } });
      return { ...view(part.section), ...(own ? seatingView(own.seats, own.members) : {}) };
    },

    async set(id, settings) {
      const { count } = await prisma.section.updateMany({ where: { id }, data: { settings: settings as Prisma.InputJsonObject } });
      return count > 0;
    },

    parts: async (sectionId) => (await prisma.part.findMany({ where: { sectionId }, select: { id: true } })).map((part) => part.id),
  };
}

function view({ id, name, instrument, seats, memberships, settings }: Row): SectionView {
  return { id, name, instrument, ...seatingView(seats, memberships), settings: settings as SectionSettings };
}

/** Held while a plan changes: a batch that commits reads the section under a share lock, so it sees the old plan or the new. False when there is no such section. */
async function hold(tx: Prisma.TransactionClient, section: string): Promise<boolean> {
  return (await tx.$queryRaw<unknown[]>`select id from section where id = ${section} for update`).length > 0;
}

async function known(tx: Prisma.TransactionClient, plan: SeatingPlan): Promise<boolean> {
  const people = membersOf(plan).map(({ person }) => person);
  return (await tx.belonging.count({ where: { personId: { in: people } } })) === people.length;
}
