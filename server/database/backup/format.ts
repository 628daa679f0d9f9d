import { z } from 'zod';

/** First line: what made the backup, of which changes of the database, and its tables, each after those it points to. */
export const Head = z.strictObject({
  bowline: z.literal('backup'),
  version: z.literal(1),
  /** ISO 8601, UTC. */
  takenAt: z.string(),
  migrations: z.array(z.string()).min(1),
  tables: z.array(z.strictObject({ name: z.string(), columns: z.array(z.strictObject({ name: z.string(), type: z.string() })).min(1) })),
});
export type Head = z.infer<typeof Head>;
export type BackupTable = Head['tables'][number];

/** One row: the number of its table, then every column as PostgreSQL writes it in text, null where nothing stands. */
export const Row = z.tuple([z.int().nonnegative()], z.string().nullable());

/** Last line: how many rows of each table, in the order of the tables, and SHA-256 over every line before, line ends included. */
export const Tail = z.strictObject({ rows: z.array(z.int().nonnegative()), sha256: z.string().length(64) });

/** A backup that cannot be taken or put back; the message says why and what to do. */
export class BackupRefused extends Error {
  override name = 'BackupRefused';
}
