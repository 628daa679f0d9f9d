import { randomUUID } from 'node:crypto';
import { WAYS, type Way } from '../../core/agreement/wire/signIn.ts';
import { HANDED_OUT, UNKNOWN, type Belonging, type Door, type Erased, type LiveSession, type SessionRow } from './door.ts';
import { createPostgresWays, letterTo } from './postgresWays.ts';
import { Prisma, type PrismaClient } from './prisma-client/client.ts';
import { NotTaken, takeUp } from './takeUp.ts';
import { tellAtDoor, trailRow } from './tell.ts';

const NAMED = { id: true, name: true } as const;
const BELONGINGS = { select: { librarian: true, deputy: true, ensemble: { select: NAMED } }, orderBy: [{ since: 'asc' }, { ensembleId: 'asc' }] } as const satisfies Prisma.Person$belongingsArgs;
/** A newer server may have written a way that this one does not know. */
const wayOf = (way: string): Way => WAYS.find((known) => known === way) ?? 'link';
/** A name may stand in the logs of many seasons. Chosen, not measured. */
const LONG = { timeout: 60_000 };
const bytes = (hash: Uint8Array): Uint8Array<ArrayBuffer> => new Uint8Array(hash);

interface SessionFound extends Pick<LiveSession, 'id' | 'open' | 'belongings' | 'begun' | 'used' | 'proven'> {
  bound: boolean;
  person: string;
  name: string;
}

/** Asked with every request, so in one statement. */
const WHO_IS_IN = Prisma.sql`select s.id, s.ensemble_id as open, s.bound, s.created_at as begun, s.used_at as used, s.proven_at as proven, p.id as person, p.name,
    (select coalesce(json_agg(json_build_object('librarian', b.librarian, 'deputy', b.deputy, 'ensemble', json_build_object('id', e.id, 'name', e.name)) order by b.since, b.ensemble_id), '[]')
      from belonging b join ensemble e on e.id = b.ensemble_id where b.person_id = p.id) as belongings
  from session s join person p on p.id = s.person_id`;

export function createPostgresDoor(prisma: PrismaClient): Door {
  /** What row-level security shows to its owner alone. */
  const asOwner = <T>(person: string, work: (tx: Prisma.TransactionClient) => Promise<T>): Promise<T> =>
    prisma.$transaction(async (tx) => {
      await tx.$queryRaw`select set_config('bowline.person', ${person}, true)`;
      return work(tx);
    });

  async function belongingsOf(people: readonly string[]): Promise<Map<string, Belonging[]>> {
    const rows = await prisma.belonging.findMany({ where: { personId: { in: [...people] } }, ...BELONGINGS, select: { ...BELONGINGS.select, personId: true } });
    const found = new Map<string, Belonging[]>();
    for (const { personId, ...belonging } of rows) found.set(personId, [...(found.get(personId) ?? []), belonging]);
    return found;
  }

  return {
    ...createPostgresWays(prisma, asOwner),

    person: (id) => prisma.person.findUnique({ where: { id }, select: NAMED }),

    async addEnsemble(name) {
      const row = { id: randomUUID(), name };
      const { count } = await prisma.ensemble.createMany({ data: [row], skipDuplicates: true });
      return count ? row : null;
    },
    ensembles: () => prisma.ensemble.findMany({ select: NAMED, orderBy: [{ createdAt: 'asc' }, { id: 'asc' }] }),
    async nameEnsemble(id, name, by = null) {
      try {
        return await prisma.$transaction(async (tx) => {
          const { count } = await tx.ensemble.updateMany({ where: { id }, data: { name } });
          if (count) await tx.trailRow.createMany({ data: [{ ...trailRow({ kind: 'ensembleNamed', facts: { name } }, by), ensembleId: id }] });
          return count > 0;
        });
      } catch (reason) {
        // Another has the name, perhaps since a moment ago.
        if ((reason as { code?: unknown }).code === 'P2002') return false;
        throw reason;
      }
    },
    async join(ensembleId, personId, standing) {
      await prisma.belonging.upsert({ where: { ensembleId_personId: { ensembleId, personId } }, create: { ensembleId, personId, ...standing }, update: standing });
    },

    belongings: async (id) => (await belongingsOf([id])).get(id) ?? [],

    belongingsOf,

    async addLink(personId, tokenHash, expiresAt, ensembleId, { invitation, letter } = HANDED_OUT) {
      await prisma.signInLink.create({ data: { personId, tokenHash: bytes(tokenHash), expiresAt, ensembleId, invitation, ...letter } });
    },
    async useLink(tokenHash, now) {
      const where = { tokenHash: bytes(tokenHash), usedAt: null, expiresAt: { gt: now } };
      // The count decides: of two that arrive together, one changes the row.
      const { count } = await prisma.signInLink.updateMany({ where, data: { usedAt: now } });
      if (!count) return null;
      const link = await prisma.signInLink.findUnique({ where: { tokenHash: bytes(tokenHash) }, include: { person: { select: NAMED } } });
      return link && { person: link.person, ensemble: link.ensembleId, invitation: link.invitation, letter: link.address === null ? null : letterTo({ address: link.address, language: link.language ?? 'en' }) };
    },

    async takeUp(tokenHash, known, now) {
      try {
        return await prisma.$transaction(async (tx) => {
          const came = await takeUp(tx, bytes(tokenHash), known, now);
          if (typeof came === 'string') throw new NotTaken(came);
          return came;
        });
      } catch (reason) {
        if (reason instanceof NotTaken) return reason.why;
        throw reason;
      }
    },

    async openSession(personId, tokenHash, expiresAt, only, { at = new Date(), ...coming } = UNKNOWN) {
      return prisma.$transaction(async (tx) => {
        const data = { ...coming, id: randomUUID(), personId, tokenHash: bytes(tokenHash), expiresAt, ensembleId: only, bound: only !== null, createdAt: at, usedAt: at, provenAt: at };
        const { id, person } = await tx.session.create({ data, select: { id: true, person: { select: NAMED } } });
        await tellAtDoor(tx, person, { kind: 'signedIn', facts: { way: coming.way } }, only);
        return id;
      });
    },
    async session(tokenHash, now) {
      const [row] = await prisma.$queryRaw<SessionFound[]>`${WHO_IS_IN} where s.token_hash = ${bytes(tokenHash)} and s.revoked_at is null and s.expires_at > ${now}`;
      if (!row) return null;
      const only = row.bound ? row.open : null;
      return { id: row.id, person: { id: row.person, name: row.name }, belongings: only === null ? row.belongings : row.belongings.filter(({ ensemble }) => ensemble.id === only), only, open: row.open, begun: row.begun, used: row.used, proven: row.proven };
    },
    async lookInto(id, ensembleId) {
      await prisma.session.updateMany({ where: { id, bound: false }, data: { ensembleId } });
    },
    async touch(id, usedAt, expiresAt) {
      await prisma.session.updateMany({ where: { id, revokedAt: null }, data: { usedAt, expiresAt } });
    },
    async renew(id, tokenHash, proven) {
      await prisma.session.updateMany({ where: { id }, data: { tokenHash: bytes(tokenHash), ...(proven ? { provenAt: proven } : {}) } });
    },
    async sessions(personId, now) {
      const rows = await prisma.session.findMany({ where: { personId, revokedAt: null, expiresAt: { gt: now } }, orderBy: { usedAt: 'desc' } });
      return rows.map((row) => ({ id: row.id, only: row.bound ? row.ensembleId : null, way: wayOf(row.way), browser: row.browser, device: row.device as SessionRow['device'], begun: row.createdAt, used: row.usedAt }));
    },
    async revoke(id, now) {
      await prisma.$transaction(async (tx) => {
        const { count } = await tx.session.updateMany({ where: { id, revokedAt: null }, data: { revokedAt: now } });
        const ended = count ? await tx.session.findUnique({ where: { id }, select: { bound: true, ensembleId: true, person: { select: NAMED } } }) : null;
        if (ended) await tellAtDoor(tx, ended.person, { kind: 'sessionEnded' }, ended.bound ? ended.ensembleId : null);
      });
    },
    shut: (ensembleId, personId, now, ways = false) =>
      prisma.$transaction(async (tx) => {
        await tx.signInLink.deleteMany({ where: { ensembleId, personId } });
        const where = { personId, revokedAt: null, expiresAt: { gt: now }, ...(ways ? {} : { ensembleId, bound: true }) };
        const open = await tx.session.findMany({ where, select: { id: true } });
        await tx.session.updateMany({ where, data: { revokedAt: now } });
        return open.map(({ id }) => id);
      }),
    async live(sessions, now) {
      const rows = await prisma.session.findMany({ where: { id: { in: sessions }, revokedAt: null, expiresAt: { gt: now } }, select: { id: true } });
      return new Set(rows.map(({ id }) => id));
    },

    async tell(id, news, only) {
      const person = await prisma.person.findUnique({ where: { id }, select: NAMED });
      if (person) await tellAtDoor(prisma, person, news, only);
    },

    left: async (personId) => (await prisma.departure.findMany({ where: { personId }, select: { ensemble: { select: NAMED } }, orderBy: { leftAt: 'asc' } })).map(({ ensemble }) => ensemble),
    async kept(id) {
      const { createdAt, sessions, links } = await prisma.person.findUniqueOrThrow({ where: { id }, select: { createdAt: true, sessions: { orderBy: { createdAt: 'asc' }, include: { ensemble: { select: NAMED } } }, links: { orderBy: { expiresAt: 'asc' } } } });
      return {
        since: createdAt.toISOString(),
        sessions: sessions.map((session) => ({ began: session.createdAt.toISOString(), ends: session.expiresAt.toISOString(), ended: session.revokedAt?.toISOString() ?? null, ensemble: session.ensemble?.name ?? null })),
        links: links.map(({ expiresAt, usedAt }) => ({ ends: expiresAt.toISOString(), used: usedAt?.toISOString() ?? null })),
      };
    },
    erase: (id, asker, comments) =>
      prisma.$transaction(async (tx) => {
        const sessions = await tx.session.findMany({ where: { personId: id }, select: { id: true } });
        const parts = await tx.$queryRaw<Erased['parts']>`select ensemble, part from erase_person(${id}, ${asker}, ${comments})`;
        return { sessions: sessions.map((session) => session.id), parts };
      }, LONG),

    hand: (personId) => asOwner(personId, (tx) => tx.hand.findUnique({ where: { personId }, select: { factor: true, shortFourth: true } })),
    async setHand(personId, hand) {
      await asOwner(personId, async (tx) => {
        if (hand) await tx.hand.upsert({ where: { personId }, create: { personId, ...hand }, update: hand });
        else await tx.hand.deleteMany({ where: { personId } });
      });
    },
  };
}
