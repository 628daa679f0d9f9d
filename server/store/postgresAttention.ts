import type pg from 'pg';
import { LettersBody } from '../../core/agreement/wire/http.ts';
import type { Attention, LettersWish } from './attention.ts';
import type { PrismaClient } from './prisma-client/client.ts';

const wishOf = ({ address, language }: { address: string; language: string }): LettersWish => ({ address, language: LettersBody.shape.language.parse(language) });

/** Two windows of one person may tell at the same time: the row itself keeps the higher number. */
const RAISE = `insert into attention (person_id, part_id, seen, told) select $1, id, $3, $4 from part where id = $2
  on conflict (person_id, part_id) do update set seen = greatest(attention.seen, excluded.seen), told = greatest(attention.told, excluded.told)`;

export function createPostgresAttention(prisma: PrismaClient, pool: pg.Pool): Attention {
  return {
    async seen(personId) {
      const rows = await prisma.attention.findMany({ where: { personId }, select: { partId: true, seen: true } });
      return new Map(rows.map(({ partId, seen }) => [partId, seen]));
    },
    see: async (person, part, seq) => ((await pool.query(RAISE, [person, part, seq, 0])).rowCount ?? 0) > 0,
    async letters(personId) {
      const row = await prisma.letters.findUnique({ where: { personId } });
      return row && wishOf(row);
    },
    async setLetters(personId, wish) {
      if (wish) await prisma.letters.upsert({ where: { personId }, create: { personId, ...wish }, update: wish });
      else await prisma.letters.deleteMany({ where: { personId } });
    },
    async correspondents() {
      const rows = await prisma.letters.findMany({ include: { person: { select: { name: true, attention: true } } }, orderBy: { personId: 'asc' } });
      return rows.map((row) => ({ ...wishOf(row), person: row.personId, name: row.person.name, sentAt: row.sentAt, remindedAt: row.remindedAt, known: new Map(row.person.attention.map(({ partId, seen, told }) => [partId, Math.max(seen, told)])) }));
    },
    async tell(personId, told, times) {
      for (const [part, seq] of told) await pool.query(RAISE, [personId, part, 0, seq]);
      await prisma.letters.updateMany({ where: { personId }, data: times });
    },
  };
}
