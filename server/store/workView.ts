import type { ProgrammeView, WorkView } from '../../core/agreement/wire/http.ts';
import type { ProgrammeBody } from '../../core/agreement/wire/programme.ts';
import type { InstrumentName } from '../../core/music/part.ts';
import type { Stage } from '../../core/agreement/state.ts';
import type { Prisma } from './prisma-client/client.ts';
import { seatingView } from './seatingRows.ts';

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

const WHO = { select: { id: true, name: true } } as const;

/** A programme with its works and the sections that sit otherwise in it. */
export const ON_SHELF = {
  works: { select: SHOWN, orderBy: { createdAt: 'asc' } },
  seatings: { include: { members: { include: { person: WHO } } }, orderBy: { section: { position: 'asc' } } },
} as const satisfies Prisma.ProgrammeInclude;

export function programmeView({ id, title, season, conductor, days, deadlines, works, seatings }: Prisma.ProgrammeGetPayload<{ include: typeof ON_SHELF }>): ProgrammeView {
  const said = { title, season, conductor, days: days as ProgrammeBody['days'], deadlines: deadlines as ProgrammeBody['deadlines'] };
  return { id, ...said, works: works.map(workView), seatings: seatings.map(({ sectionId, seats, members }) => ({ section: sectionId, ...seatingView(seats, members) })) };
}
