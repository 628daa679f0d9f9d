import { randomUUID } from 'node:crypto';
import type pg from 'pg';
import type { Part } from '../../core/music/part.ts';
import type { ProgrammeBody } from '../../core/agreement/wire/programme.ts';
import type { WorkView } from '../../core/agreement/wire/http.ts';
import { insertEdition, insertFiles, insertParts, nextPosition, renewPart } from './editionRows.ts';
import type { EarlierEdition, Library, StoredPart } from './library.ts';
import { endWithin } from './postgresJobs.ts';
import type { PrismaClient } from './prisma-client/client.ts';
import { lastDay } from './programmeEnd.ts';
import { transaction } from './transaction.ts';
import { ON_SHELF, programmeView, SHOWN, workView } from './workView.ts';

export function createPostgresLibrary(prisma: PrismaClient, pool: pg.Pool): Library {
  async function work(id: string): Promise<WorkView | null> {
    const row = await prisma.work.findUnique({ where: { id }, select: SHOWN });
    return row && workView(row);
  }

  async function storedParts(where: 'id' | 'work_id', id: string): Promise<StoredPart[]> {
    const { rows } = await pool.query<PartRow>(`${STORED} where p.${where} = $1 order by p.position`, [id]);
    return rows.map(({ work_id, title, composer, ...part }) => ({ ...part, work: { id: work_id, title, composer } }));
  }

  return {
    work,
    part: async (id) => (await storedParts('id', id))[0] ?? null,
    partsOf: (id) => storedParts('work_id', id),

    async addProgramme(programme) {
      const { id } = await prisma.programme.create({ data: { id: randomUUID(), ...programme, ends: ends(programme) }, select: { id: true } });
      return { id, ...programme, works: [], seatings: [] };
    },
    async setProgramme(id, programme) {
      const { count } = await prisma.programme.updateMany({ where: { id }, data: { ...programme, ends: ends(programme) } });
      return count > 0;
    },

    async programme(id) {
      const row = await prisma.programme.findUnique({ where: { id }, include: ON_SHELF });
      return row && programmeView(row);
    },
    programmes: async () => (await prisma.programme.findMany({ include: ON_SHELF, orderBy: { createdAt: 'asc' } })).map(programmeView),

    async addWork(programme, { title, composer }, edition, parts, further = [], ending) {
      const id = randomUUID();
      const added = await transaction(pool, async (client) => {
        const { rowCount } = await client.query('insert into work (id, programme_id, title, composer) select $1, id, $3, $4 from programme where id = $2', [id, programme, title, composer]);
        if (!rowCount) return false;
        await insertFiles(client, id, [{ edition, parts }, ...further], 0);
        if (ending) await endWithin(client, ending, id);
        return true;
      });
      return added ? work(id) : null;
    },

    async addFiles(id, files, ending) {
      const added = await transaction(pool, async (client) => {
        // The row is held, so that two who add at once do not number their parts alike.
        const { rowCount } = await client.query('select from work where id = $1 for update', [id]);
        if (!rowCount) return false;
        await insertFiles(client, id, files, await nextPosition(client, id));
        if (ending) await endWithin(client, ending, id);
        return true;
      });
      return added ? work(id) : null;
    },

    async addEdition(id, edition, changed, added, ending) {
      await transaction(pool, async (client) => {
        const source = await insertEdition(client, id, edition);
        // In one order for everybody, so that two corrected editions cannot wait for each other.
        for (const part of [...changed].sort((a, b) => (a.id < b.id ? -1 : 1))) await renewPart(client, part, source, edition);
        await insertParts(client, id, source, added, await nextPosition(client, id));
        if (ending) await endWithin(client, ending, id);
      });
      return (await work(id))!;
    },

    async source(id) {
      const { rows } = await pool.query<{ bytes: Buffer; fileName: string }>('select bytes, file_name as "fileName" from edition where id = $1', [id]);
      return rows[0] ?? null;
    },

    async earlier(part) {
      const sql = `select m.revision, m.edition_id as edition, e.file_name as "fileName", m.settled
        from earlier_music m join edition e on e.id = m.edition_id where m.part_id = $1 order by m.revision desc`;
      return (await pool.query<EarlierEdition>(sql, [part])).rows;
    },

    async earlierMusic(part, revision) {
      const { rows } = await pool.query<{ content: Part }>('select content from earlier_music where part_id = $1 and revision = $2', [part, revision]);
      return rows[0]?.content ?? null;
    },

    async settle(part, revision, key, settled) {
      const sql = settled
        ? 'update earlier_music set settled = (settled::jsonb || jsonb_build_object($3::text, $4::jsonb))::json where part_id = $1 and revision = $2'
        : 'update earlier_music set settled = (settled::jsonb - $3::text)::json where part_id = $1 and revision = $2';
      const { rowCount } = await pool.query(sql, settled ? [part, revision, key, JSON.stringify(settled)] : [part, revision, key]);
      return Boolean(rowCount);
    },

    async assign(id, section) {
      if (section === null) return (await prisma.part.updateMany({ where: { id }, data: { sectionId: null } })).count > 0;
      const { rowCount } = await pool.query(ON_STANDS, [id, section]);
      return Boolean(rowCount);
    },
  };
}

const ends = (programme: ProgrammeBody): Date | null => {
  const day = lastDay(programme);
  return day === null ? null : new Date(day);
};

const STORED = `select p.id, p.edition_id as edition, p.section_id as section, p.content, p.revision, p.head, w.id as work_id, w.title, w.composer
  from part p join work w on w.id = p.work_id`;

const ON_STANDS = `update part p set section_id = s.id, instrument = s.instrument,
  content = case when p.instrument = s.instrument then p.content else jsonb_set(p.content::jsonb, '{instrument}', to_jsonb(s.instrument))::json end
  from section s where p.id = $1 and s.id = $2`;

type PartRow = Omit<StoredPart, 'work'> & { work_id: string; title: string; composer: string };
