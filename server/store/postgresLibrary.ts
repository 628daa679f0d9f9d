import { randomUUID } from 'node:crypto';
import type pg from 'pg';
import type { Part } from '../../core/music/part.ts';
import type { ProgrammeBody } from '../../core/agreement/wire/programme.ts';
import type { WorkView } from '../../core/agreement/wire/http.ts';
import { insertEdition, insertFiles, insertParts, nextPosition, renewPart } from './editionRows.ts';
import type { EarlierEdition, Library, NewEdition, StoredPart } from './library.ts';
import { endWithin } from './postgresJobs.ts';
import type { PrismaClient } from './prisma-client/client.ts';
import { lastDay } from './programmeEnd.ts';
import { tell, tellIn } from './tell.ts';
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

    addProgramme: (programme, by = null) =>
      prisma.$transaction(async (tx) => {
        const { id } = await tx.programme.create({ data: { id: randomUUID(), ...programme, ends: ends(programme) }, select: { id: true } });
        await tellIn(tx, { kind: 'programmeAdded', facts: { programme: programme.title } }, by);
        return { id, ...programme, works: [], seatings: [] };
      }),
    setProgramme: (id, programme, by = null) =>
      prisma.$transaction(async (tx) => {
        const { count } = await tx.programme.updateMany({ where: { id }, data: { ...programme, ends: ends(programme) } });
        if (count) await tellIn(tx, { kind: 'programmeChanged', facts: { programme: programme.title } }, by);
        return count > 0;
      }),

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
        await tellOf(client, 'workLaid', title, edition);
        if (ending) await endWithin(client, ending, id);
        return true;
      });
      return added ? work(id) : null;
    },

    async addFiles(id, files, ending) {
      const added = await transaction(pool, async (client) => {
        // The row is held, so that two who add at once do not number their parts alike.
        const { rows } = await client.query<{ title: string }>('select title from work where id = $1 for update', [id]);
        if (!rows[0]) return false;
        await insertFiles(client, id, files, await nextPosition(client, id));
        for (const { edition } of files) await tellOf(client, 'filesLaid', rows[0].title, edition);
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
        const { rows } = await client.query<{ title: string }>('select title from work where id = $1', [id]);
        await tellOf(client, 'editionLaid', rows[0]!.title, edition);
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

    assign: (id, section, by = null) =>
      transaction(pool, async (client) => {
        const { rowCount } = section === null ? await client.query('update part set section_id = null where id = $1', [id]) : await client.query(ON_STANDS, [id, section]);
        if (!rowCount) return false;
        const { rows } = await client.query<{ part: string; work: string; section: string | null }>(NAMED, [id]);
        const { section: to, ...names } = rows[0]!;
        await tell(client, { kind: 'partAssigned', part: id, section, facts: { ...names, ...(to === null ? {} : { section: to }) } }, by);
        return true;
      }),
  };
}

const ends = (programme: ProgrammeBody): Date | null => {
  const day = lastDay(programme);
  return day === null ? null : new Date(day);
};

const STORED = `select p.id, p.edition_id as edition, p.section_id as section, p.content, p.revision, p.rewritten, p.head, w.id as work_id, w.title, w.composer
  from part p join work w on w.id = p.work_id`;

const ON_STANDS = `update part p set section_id = s.id, instrument = s.instrument,
  content = case when p.instrument = s.instrument then p.content else jsonb_set(p.content::jsonb, '{instrument}', to_jsonb(s.instrument))::json end
  from section s where p.id = $1 and s.id = $2`;

const NAMED = 'select p.name as part, w.title as work, s.name as section from part p join work w on w.id = p.work_id left join section s on s.id = p.section_id where p.id = $1';

/** An edition was laid on the shelf by whoever brought it. */
async function tellOf(client: pg.PoolClient, kind: 'workLaid' | 'filesLaid' | 'editionLaid', work: string, { by, fileName }: NewEdition): Promise<void> {
  const { rows } = await client.query<{ id: string; name: string }>('select id, name from person where id = $1', [by]);
  await tell(client, { kind, facts: { work, file: fileName } }, rows[0] ?? null);
}

type PartRow = Omit<StoredPart, 'work'> & { work_id: string; title: string; composer: string };
