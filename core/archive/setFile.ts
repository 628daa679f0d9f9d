import { z } from 'zod';
import type { LogEntry } from '../agreement/event.ts';
import { Mark } from '../music/mark.ts';
import { SeatId, Seats } from '../music/seat.ts';
import { KeptUnder } from './keptSet.ts';

const text = z.string().max(500);

/** A row of a part's log. What is known of its events is known to the program; whoever reads the file elsewhere finds their `type` and values. */
const ArchivedEntry = z.strictObject({
  seq: z.int().positive(),
  operation: z.string().max(64),
  name: z.string().max(40),
  input: z.json(),
  events: z.array(z.looseObject({ type: z.string().max(40) })).max(50),
  by: z.string().max(64),
  byName: z.string().max(80),
  at: z.iso.datetime(),
});

/** A mark that stands, said so that it can be read without the log: on which note, for whom, by whom, when and why. */
const ArchivedMark = z.strictObject({
  /** Id of its note, as in `notes`. */
  note: z.string().max(64),
  /** Ordinal of the measure in the part, from 1, and its printed number. */
  measure: z.int().positive(),
  number: z.string().max(40),
  value: Mark.shape.value,
  seats: Seats,
  by: text,
  /** ISO 8601, UTC. */
  at: z.iso.datetime(),
  why: text,
});
export type ArchivedMark = z.infer<typeof ArchivedMark>;

const ArchivedPart = z.strictObject({
  /** Id of the part in the source document. */
  id: z.string().min(1).max(200),
  name: text,
  section: text.nullable(),
  seats: z.array(SeatId).max(40),
  /** Ids of the notes and rests of each measure, in the order of the source document. */
  notes: z.array(z.array(z.string().min(1).max(64))).max(20_000),
  marks: z.array(ArchivedMark),
  log: z.array(ArchivedEntry),
});
export type ArchivedPart = z.infer<typeof ArchivedPart>;

/** `set.json` of an archive: one set of marks, beside the document it stands on. Published as a JSON schema at /api/archive.schema.json. */
export const SetFile = z.strictObject({
  format: z.literal('bowline-set'),
  version: z.literal(1),
  id: z.uuid(),
  title: text,
  composer: text,
  ...KeptUnder.shape,
  keptBy: text,
  keptAt: z.iso.datetime(),
  source: z.strictObject({
    /** Name in the archive, and the name it was uploaded under. */
    file: z.enum(['source.musicxml', 'source.mxl']),
    name: text,
  }),
  parts: z.array(ArchivedPart).min(1).max(200),
});
export type SetFile = z.infer<typeof SetFile>;

/** `archive.json`: what is in the archive. */
export const ArchiveFile = z.strictObject({
  format: z.literal('bowline-archive'),
  version: z.literal(1),
  sets: z.array(z.strictObject({ id: z.uuid(), title: text, composer: text, ...KeptUnder.shape, folder: z.string().regex(/^sets\/[0-9a-f-]{36}$/) })).max(2000),
});
export type ArchiveFile = z.infer<typeof ArchiveFile>;

/** Rows of a log as the program knows them; their events are proved by replaying them. */
export const asLog = (rows: ArchivedPart['log']): LogEntry[] => rows as unknown as LogEntry[];
