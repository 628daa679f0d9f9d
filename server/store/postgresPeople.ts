import { randomUUID } from 'node:crypto';
import type { People, Person } from './people.ts';
import type { PrismaClient } from './prisma-client/client.ts';

const WHO = { id: true, name: true, librarian: true } as const;
const bytes = (hash: Uint8Array): Uint8Array<ArrayBuffer> => new Uint8Array(hash);

export function createPostgresPeople(prisma: PrismaClient): People {
  const byId = (id: string): Promise<Person | null> => prisma.person.findUnique({ where: { id }, select: WHO });
  return {
    byId,
    add: (name, librarian) => prisma.person.create({ data: { id: randomUUID(), name, librarian }, select: WHO }),
    all: () => prisma.person.findMany({ select: WHO, orderBy: [{ createdAt: 'asc' }, { id: 'asc' }] }),

    async memberships(personId) {
      const rows = await prisma.membership.findMany({ where: { personId }, include: { section: { select: { name: true } } }, orderBy: { section: { position: 'asc' } } });
      return rows.map((row) => ({ section: row.sectionId, sectionName: row.section.name, role: row.principal ? 'principal' : 'player', seat: row.seat }));
    },

    async addLink(personId, tokenHash, expiresAt) {
      await prisma.signInLink.create({ data: { personId, tokenHash: bytes(tokenHash), expiresAt } });
    },

    async useLink(tokenHash, now) {
      const where = { tokenHash: bytes(tokenHash), usedAt: null, expiresAt: { gt: now } };
      // The count decides: of two that arrive together, one changes the row.
      const { count } = await prisma.signInLink.updateMany({ where, data: { usedAt: now } });
      if (!count) return null;
      return prisma.signInLink.findUnique({ where: { tokenHash: bytes(tokenHash) }, select: { person: { select: WHO } } }).then((link) => link?.person ?? null);
    },

    async openSession(personId, tokenHash, expiresAt) {
      const { id } = await prisma.session.create({ data: { id: randomUUID(), personId, tokenHash: bytes(tokenHash), expiresAt } });
      return id;
    },

    async session(tokenHash, now) {
      const row = await prisma.session.findFirst({ where: { tokenHash: bytes(tokenHash), revokedAt: null, expiresAt: { gt: now } }, select: { id: true, person: { select: WHO } } });
      return row && { id: row.id, person: row.person };
    },

    hand: (personId) => prisma.hand.findUnique({ where: { personId }, select: { factor: true, shortFourth: true } }),
    async setHand(personId, hand) {
      if (hand) await prisma.hand.upsert({ where: { personId }, create: { personId, ...hand }, update: hand });
      else await prisma.hand.deleteMany({ where: { personId } });
    },

    async revoke(id, now) {
      await prisma.session.updateMany({ where: { id, revokedAt: null }, data: { revokedAt: now } });
    },
  };
}
