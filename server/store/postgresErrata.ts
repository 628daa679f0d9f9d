import { randomUUID } from 'node:crypto';
import type { ErratumView } from '../../core/archive/erratum.ts';
import { inOrder, type Errata } from './errata.ts';
import type { PrismaClient } from './prisma-client/client.ts';

type Row = Omit<ErratumView, 'at' | 'settled'> & { workId: string; at: Date; settled: Date | null };
const viewOf = ({ workId: _, at, settled, ...row }: Row): ErratumView => ({ ...row, at: at.toISOString(), settled: settled?.toISOString() ?? null });

export function createPostgresErrata(prisma: PrismaClient): Errata {
  return {
    async add(workId, erratum) {
      if (!(await prisma.work.count({ where: { id: workId } }))) return null;
      return viewOf(await prisma.erratum.create({ data: { ...erratum, id: randomUUID(), workId } }));
    },
    of: async (workId) => (await prisma.erratum.findMany({ where: { workId } })).map(viewOf).sort(inOrder),
    settle: async (id, settled) => (await prisma.erratum.updateMany({ where: { id }, data: { settled } })).count > 0,
  };
}
