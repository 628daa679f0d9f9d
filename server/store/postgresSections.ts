import { randomUUID } from 'node:crypto';
import type { SectionSettings, SectionView } from '../../core/agreement/wire/http.ts';
import type { Prisma, PrismaClient } from './prisma-client/client.ts';
import { seatingView } from './seatingRows.ts';
import { tellIn } from './tell.ts';
import { membersOf, planFits, type SeatingPlan, type Sections } from './sections.ts';

const WHO = { select: { id: true, name: true } } as const;
const WITH_PEOPLE = { memberships: { include: { person: WHO } } } as const;
type Row = Prisma.SectionGetPayload<{ include: typeof WITH_PEOPLE }>;

export function createPostgresSections(prisma: PrismaClient): Sections {
  return {
    async add(name, instrument, by = null) {
      const last = await prisma.section.aggregate({ _max: { position: true } });
      const row = { id: randomUUID(), name, instrument, position: (last._max.position ?? 0) + 1, seats: [] };
      return prisma.$transaction(async (tx) => {
        const { count } = await tx.section.createMany({ data: [row], skipDuplicates: true });
        if (!count) return null;
        await tellIn(tx, { kind: 'sectionAdded', section: row.id, facts: { section: name } }, by);
        return { id: row.id, name, instrument, seats: [], principal: null, settings: {} };
      });
    },

    all: async () => (await prisma.section.findMany({ include: WITH_PEOPLE, orderBy: { position: 'asc' } })).map(view),

    async byId(id) {
      const row = await prisma.section.findUnique({ where: { id }, include: WITH_PEOPLE });
      return row && view(row);
    },

    async seat(id, plan, by = null) {
      if (!planFits(plan)) return false;
      const seated = membersOf(plan).map(({ person, ...place }) => ({ ...place, personId: person, sectionId: id }));
      return prisma.$transaction(async (tx) => {
        const section = await hold(tx, id);
        if (section === null || !(await known(tx, plan, { deputy: false }))) return false;
        await tx.membership.deleteMany({ where: { sectionId: id } });
        await tx.membership.createMany({ data: seated });
        await tx.section.update({ where: { id }, data: { seats: plan.seats.map((place) => place.seat) } });
        await tellIn(tx, { kind: 'seatingChanged', section: id, facts: { section } }, by);
        return true;
      });
    },

    async seatFor(programmeId, sectionId, plan, by = null) {
      if (plan && !planFits(plan)) return false;
      return prisma.$transaction(async (tx) => {
        const section = await hold(tx, sectionId);
        const programme = await tx.programme.findUnique({ where: { id: programmeId }, select: { title: true } });
        if (section === null || !programme) return false;
        if (plan && !(await known(tx, plan))) return false;
        const where = { programmeId, sectionId };
        await tx.programmeSeating.deleteMany({ where });
        await tellIn(tx, { kind: 'seatingChanged', section: sectionId, facts: { section, programme: programme.title } }, by);
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

    set: (id, settings, by = null) =>
      prisma.$transaction(async (tx) => {
        const section = await hold(tx, id);
        if (section === null) return false;
        await tx.section.update({ where: { id }, data: { settings: settings as Prisma.InputJsonObject } });
        await tellIn(tx, { kind: 'settingsChanged', section: id, facts: { section } }, by);
        return true;
      }),

    parts: async (sectionId) => (await prisma.part.findMany({ where: { sectionId }, select: { id: true } })).map((part) => part.id),
  };
}

function view({ id, name, instrument, seats, memberships, settings }: Row): SectionView {
  return { id, name, instrument, ...seatingView(seats, memberships), settings: settings as SectionSettings };
}

/** Held while a plan changes: a batch that commits reads the section under a share lock, so it sees the old plan or the new. Its name; null when there is no such section. */
async function hold(tx: Prisma.TransactionClient, section: string): Promise<string | null> {
  return (await tx.$queryRaw<{ name: string }[]>`select name from section where id = ${section} for update`)[0]?.name ?? null;
}

async function known(tx: Prisma.TransactionClient, plan: SeatingPlan, who: { deputy?: boolean } = {}): Promise<boolean> {
  const people = membersOf(plan).map(({ person }) => person);
  return (await tx.belonging.count({ where: { personId: { in: people }, ...who } })) === people.length;
}
