import { LetterLanguage } from '../../core/agreement/wire/signIn.ts';
import type { Prisma, PrismaClient } from './prisma-client/client.ts';
import type { LetterTo, Ways } from './ways.ts';

const NAMED = { id: true, name: true } as const;
const bytes = (hash: Uint8Array): Uint8Array<ArrayBuffer> => new Uint8Array(hash);
export const letterTo = ({ address, language }: { address: string; language: string }): LetterTo => ({ address, language: LetterLanguage.parse(language) });

/** Another person was quicker with the same address. */
class Taken extends Error {}

/** `asOwner` tells row-level security whose rows are wanted. */
export function createPostgresWays(prisma: PrismaClient, asOwner: <T>(person: string, work: (tx: Prisma.TransactionClient) => Promise<T>) => Promise<T>): Ways {
  return {
    async address(personId) {
      const row = await prisma.address.findUnique({ where: { personId } });
      return row && { ...letterTo(row), confirmed: row.confirmedAt !== null };
    },
    async whoseAddress(address) {
      const row = await prisma.address.findUnique({ where: { address }, include: { person: { select: NAMED } } });
      return row && { person: row.person, to: { ...letterTo(row), confirmed: row.confirmedAt !== null } };
    },
    setAddress: (personId, { address, language }, confirmedAt) =>
      prisma
        .$transaction(async (tx) => {
          if (confirmedAt) await tx.address.deleteMany({ where: { address, confirmedAt: null } });
          await tx.address.deleteMany({ where: { personId } });
          const { count } = await tx.address.createMany({ data: [{ address, language, personId, confirmedAt }], skipDuplicates: true });
          if (!count) throw new Taken();
          return true;
        })
        .catch((reason: unknown) => {
          if (reason instanceof Taken) return false;
          throw reason;
        }),
    async forgetAddress(personId) {
      await prisma.$transaction([prisma.address.deleteMany({ where: { personId } }), prisma.addressClaim.deleteMany({ where: { personId } })]);
    },
    async claimAddress(personId, tokenHash, to, expiresAt) {
      const row = { ...to, tokenHash: bytes(tokenHash), expiresAt };
      await prisma.addressClaim.upsert({ where: { personId }, create: { personId, ...row }, update: row });
    },
    async claimed(personId, now) {
      return (await prisma.addressClaim.findFirst({ where: { personId, expiresAt: { gt: now } } }))?.address ?? null;
    },
    async takeClaim(personId, tokenHash, now) {
      const where = { personId, tokenHash: bytes(tokenHash), expiresAt: { gt: now } };
      const row = await prisma.addressClaim.findFirst({ where });
      // The count decides: of two that arrive together, one takes it.
      return row && (await prisma.addressClaim.deleteMany({ where })).count ? letterTo(row) : null;
    },

    password: (personId) => asOwner(personId, async (tx) => (await tx.password.findUnique({ where: { personId } }))?.hash ?? null),
    async setPassword(personId, hash, setAt) {
      await asOwner(personId, async (tx) => {
        if (hash === null) await tx.password.deleteMany({ where: { personId } });
        else await tx.password.upsert({ where: { personId }, create: { personId, hash, setAt }, update: { hash, setAt } });
      });
    },

    knowsIdentity: async (personId, issuer) => (await prisma.identity.count({ where: { personId, issuer } })) > 0,
    async whoseIdentity(issuer, subject) {
      const row = await prisma.identity.findUnique({ where: { issuer_subject: { issuer, subject } }, select: { person: { select: NAMED } } });
      return row && row.person;
    },
    async bindIdentity(personId, issuer, subject, boundAt) {
      await prisma.identity.createMany({ data: [{ personId, issuer, subject, boundAt }], skipDuplicates: true });
      return (await prisma.identity.count({ where: { personId, issuer, subject } })) > 0;
    },
    async forgetIdentities(personId) {
      await prisma.identity.deleteMany({ where: { personId } });
    },
    async beginErrand(tokenHash, { session, link }, expiresAt) {
      await prisma.identityErrand.create({ data: { tokenHash: bytes(tokenHash), sessionId: session, link: link && bytes(link), expiresAt } });
    },
    async takeErrand(tokenHash, now) {
      const where = { tokenHash: bytes(tokenHash) };
      const row = await prisma.identityErrand.findUnique({ where });
      // Those who never came back go with whoever does.
      const { count } = await prisma.identityErrand.deleteMany({ where });
      await prisma.identityErrand.deleteMany({ where: { expiresAt: { lte: now } } });
      return row && count && row.expiresAt > now ? { session: row.sessionId, link: row.link } : null;
    },

    async invitations(ensembleId, now) {
      const rows = await prisma.signInLink.findMany({ where: { ensembleId, invitation: true, usedAt: null, expiresAt: { gt: now } }, include: { person: { select: NAMED } }, orderBy: { expiresAt: 'asc' } });
      return rows.map(({ id, person, address, expiresAt }) => ({ id, person, address, until: expiresAt }));
    },
    async withdraw(ensembleId, id, now) {
      return (await prisma.signInLink.updateMany({ where: { ensembleId, id, invitation: true, usedAt: null, expiresAt: { gt: now } }, data: { usedAt: now } })).count > 0;
    },
  };
}
