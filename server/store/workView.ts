import type { Shelf, WorkView } from '../../core/agreement/wire/http.ts';
import type { InstrumentName } from '../../core/music/part.ts';
import type { Stage } from '../../core/agreement/state.ts';
import type { Prisma } from './prisma-client/client.ts';

const PART = { id: true, name: true, instrument: true, measures: true, stage: true, locked: true, open: true, head: true, revision: true, section: { select: { id: true, name: true } } } as const;

/** What a work shows on the shelf; the music and the documents stay where they are. */
export const SHOWN = {
  id: true,
  title: true,
  composer: true,
  parts: { select: PART, orderBy: { position: 'asc' } },
  editions: { select: { fileName: true, importedAt: true }, orderBy: { importedAt: 'desc' }, take: 1 },
} as const satisfies Prisma.WorkSelect;

export function workView({ editions: [edition], parts, ...work }: Prisma.WorkGetPayload<{ select: typeof SHOWN }>): WorkView {
  return {
    ...work,
    fileName: edition?.fileName ?? '',
    importedAt: edition?.importedAt.toISOString() ?? '',
    parts: parts.map((part) => ({ ...part, instrument: part.instrument as InstrumentName | null, stage: part.stage as Stage })),
  };
}

const day = (date: Date | null): string | null => date?.toISOString().slice(0, 10) ?? null;

export function programmeView(row: { id: string; title: string; firstRehearsal: Date | null; concert: Date | null }): Omit<Shelf['programmes'][number], 'works'> {
  return { id: row.id, title: row.title, firstRehearsal: day(row.firstRehearsal), concert: day(row.concert) };
}
