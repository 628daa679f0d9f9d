import { randomUUID } from 'node:crypto';
import type pg from 'pg';
import type { DoorNews, By, News } from './trail.ts';
import type { Known } from './door.ts';
import type { Prisma } from './prisma-client/client.ts';

/** A row of the trail but for its ensemble. Nothing is asked back of the database: the door may not read what it tells. */
export const trailRow = ({ kind, about = null, section = null, part = null, facts = {} }: News, by: By) => ({
  id: randomUUID(),
  kind,
  byId: by?.id ?? null,
  byName: by?.name ?? null,
  aboutId: about?.id ?? null,
  aboutName: about?.name ?? null,
  sectionId: section,
  partId: part,
  facts,
});

const INSERT = 'insert into trail (id, kind, by_id, by_name, about_id, about_name, section_id, part_id, facts) values ($1, $2, $3, $4, $5, $6, $7, $8, $9)';

/** Tells within a transaction that is under way: it is told if and only if it is done. */
export async function tell(client: Pick<pg.PoolClient, 'query'>, news: News, by: By): Promise<void> {
  const { facts, ...row } = trailRow(news, by);
  await client.query(INSERT, [...Object.values(row), JSON.stringify(facts)]);
}

/** The same in a transaction of Prisma's. */
export async function tellIn(tx: Pick<Prisma.TransactionClient, 'trailRow'>, news: News, by: By): Promise<void> {
  await tx.trailRow.createMany({ data: [trailRow(news, by)] });
}

/**
 * At the door, within the transaction of what happens there: a row in every ensemble of the person, or in the one whose link or session it is about.
 */
export async function tellAtDoor(tx: Pick<Prisma.TransactionClient, 'trailRow' | 'belonging'>, person: Known, { kind, by = person, facts = {} }: DoorNews, only: string | null = null): Promise<void> {
  const where = only === null ? { personId: person.id } : { personId: person.id, ensembleId: only };
  const belongings = await tx.belonging.findMany({ where, select: { ensembleId: true } });
  await tx.trailRow.createMany({ data: belongings.map(({ ensembleId }) => ({ ...trailRow({ kind, about: person, facts }, by), ensembleId })) });
}
